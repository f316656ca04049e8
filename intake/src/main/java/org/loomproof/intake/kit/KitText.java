package org.loomproof.intake.kit;

import java.util.LinkedHashMap;
import java.util.Map;
import org.loomproof.intake.kit.LeadReading.PortKind;
import org.loomproof.workshop.brief.text.YamlPrinter;
import org.loomproof.workshop.quantity.QuantityWriter;
import org.loomproof.workshop.trade.colour.WireColour;
import org.loomproof.workshop.words.Messages;

/** A list of leads as the beginning of a kit file: what was read, and behind {@code #} what must be filled in. */
public final class KitText {

    private final Messages messages;

    /** The remarks are in the language of the messages. */
    public KitText(Messages messages) {
        this.messages = messages;
    }

    /** The file's text, for a kit of that name. */
    public String write(LeadNotes notes, String file, String name) {
        Map<String, Object> entries = new LinkedHashMap<>();
        entries.put("format", "loomproof kit 1");
        entries.put("kit", Map.of("name", name));
        entries.put(
                "leads", notes.leads().stream().map(lead -> lead(lead, file)).toList());
        StringBuilder text = new StringBuilder(YamlPrinter.print(entries));
        text.append(YamlPrinter.remark(messages.text("intake.file.kit")));
        text.append(YamlPrinter.remark("  " + messages.text("intake.file.kit-supply")));
        text.append(YamlPrinter.remark("  " + messages.text("intake.file.kit-survives")));
        text.append(YamlPrinter.remark("  " + messages.text("intake.file.kit-behaviour")));
        for (LeadReading lead : notes.leads()) {
            lead.asks().forEach(ask -> text.append(YamlPrinter.remark("  " + lead.id() + ": " + messages.text(ask))));
        }
        return text.toString();
    }

    private static Map<String, Object> lead(LeadReading lead, String file) {
        Map<String, Object> entries = new LinkedHashMap<>();
        entries.put("id", lead.id());
        entries.put("plug", lead.plug());
        entries.put("position", lead.position());
        entries.put(
                "colour",
                lead.colour().map(a -> a.value()).map(WireColour::letters).orElse(""));
        entries.put(
                "size", lead.size().map(a -> QuantityWriter.write(a.value())).orElse(""));
        entries.put("role", lead.role().map(a -> a.value().word()).orElse(""));
        entries.put("port", lead.port().map(port -> port(port, lead)).orElse(Map.of()));
        entries.put("note", lead.name() + " (" + file + " " + lead.origin() + ")");
        return entries;
    }

    private static Map<String, Object> port(PortKind kind, LeadReading lead) {
        Map<String, Object> entries = new LinkedHashMap<>();
        entries.put(
                "kind",
                switch (kind) {
                    case SUPPLY -> "supply";
                    case GROUND -> "ground";
                    case LOW_INPUT, HIGH_INPUT -> "input";
                    case LOW_SIDE -> "low-side";
                    case HIGH_SIDE -> "high-side";
                    case TO_EXTRA -> "to-extra";
                });
        if (kind == PortKind.LOW_INPUT || kind == PortKind.HIGH_INPUT) {
            entries.put("active", kind == PortKind.LOW_INPUT ? "low" : "high");
        }
        if (kind.isOutput()) {
            entries.put("rating", lead.rating().map(QuantityWriter::write).orElse(""));
            entries.put("pulse", lead.pulse().map(QuantityWriter::write).orElse(""));
        }
        if (kind == PortKind.TO_EXTRA) {
            entries.put("extra", lead.role().map(a -> a.value().word()).orElse(""));
        }
        return entries;
    }
}
