package org.loomproof.intake.sheet;

import java.util.Map;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.fact.VehicleFacts;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.brief.text.YamlPrinter;
import org.loomproof.workshop.brief.write.SheetWriter;
import org.loomproof.workshop.words.Messages;

/** A drafted sheet as a file: the circuits, and behind {@code #} what is still missing and what was held back. */
public final class SheetText {

    private final Messages messages;

    /** The remarks are in the language of the messages. */
    public SheetText(Messages messages) {
        this.messages = messages;
    }

    /**
     * The file's text; {@code facts} are the vehicle's, as written behind their keys. What the notes {@code say} of it stands beside the keys that are to
     * be filled in: a person takes it, or does not.
     */
    public String write(DraftSheet draft, Map<String, String> facts, VehicleFacts say) {
        StringBuilder text = new StringBuilder(SheetWriter.write(facts, draft.operables(), draft.circuits()));
        Map<String, String> missing = SheetFacts.listMissing(facts);
        if (!missing.isEmpty()) {
            text.append(YamlPrinter.remark(messages.text("intake.file.facts")));
            missing.forEach((key, may) -> text.append(YamlPrinter.remark("  " + key + ": " + may + said(key, say))));
        }
        if (!draft.heldBack().isEmpty()) {
            text.append(YamlPrinter.remark(messages.text("intake.file.held-back")));
            draft.heldBack().forEach(held -> heldBack(text, held));
        }
        return text.toString();
    }

    private String said(String key, VehicleFacts say) {
        return say.agreed().stream()
                .filter(fact -> fact.key().equals(key))
                .findFirst()
                .map(fact -> " " + messages.text("intake.file.said", fact.value(), fact.origin()))
                .orElse("");
    }

    private void heldBack(StringBuilder text, HeldBack held) {
        Entry entry = held.entry();
        text.append(YamlPrinter.remark("- " + entry.origin() + " " + entry.name()));
        text.append(YamlPrinter.remark("  " + messages.text("intake.held." + Words.of(held.reason()))));
        text.append(YamlPrinter.remark("  " + messages.text(held.ask())));
    }
}
