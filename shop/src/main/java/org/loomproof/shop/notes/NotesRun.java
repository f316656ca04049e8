package org.loomproof.shop.notes;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.intake.check.ReadNotes;
import org.loomproof.intake.decode.Decoder;
import org.loomproof.intake.decode.SourceLines;
import org.loomproof.intake.kit.KitText;
import org.loomproof.intake.kit.LeadNotes;
import org.loomproof.intake.sheet.DraftSheet;
import org.loomproof.intake.sheet.Needs;
import org.loomproof.intake.sheet.SheetFacts;
import org.loomproof.intake.sheet.SheetText;
import org.loomproof.workshop.brief.complete.SheetCompletion;
import org.loomproof.workshop.brief.order.Order;
import org.loomproof.workshop.brief.read.BriefReader;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.brief.text.TextFile;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.trade.template.TradeDefaults;
import org.loomproof.workshop.words.Messages;

/** Reads notes from files, and gives what a sheet or a kit would be of them. Writes nothing. */
public final class NotesRun {

    private final Messages messages;
    private final Decoder decoder = new Decoder();

    /** Remarks in the files are in the language of the messages. */
    public NotesRun(Messages messages) {
        this.messages = messages;
    }

    /**
     * Wiring notes as a sheet, or every problem of the files.
     *
     * @param facts the vehicle's, as written behind their keys; what is missing is asked for
     * @param order what is wanted: circuits that it needs and the notes lack are listed
     */
    public Checked<SheetReading> sheet(Path notes, Map<String, String> facts, Optional<Path> order) {
        List<Problem> problems = new ArrayList<>();
        Optional<SourceLines> source = kept(decoder.decode(notes), problems);
        Optional<Order> wanted = order.flatMap(file -> kept(order(file), problems));
        if (!problems.isEmpty()) {
            return new Checked.Bad<>(problems);
        }
        return new Checked.Good<>(read(source.orElseThrow(), facts, wanted));
    }

    private SheetReading read(SourceLines source, Map<String, String> facts, Optional<Order> order) {
        ReadNotes notes = ReadNotes.of(source);
        DraftSheet draft = DraftSheet.of(notes, name(source), SheetFacts.steering(facts), Set.of());
        return new SheetReading(
                source,
                notes,
                draft,
                order.map(o -> Needs.listMissing(
                                o, draft.circuits().stream().map(Circuit::role).toList()))
                        .orElse(List.of()),
                SheetFacts.listMissing(facts),
                new SheetText(messages).write(draft, inOrder(facts)));
    }

    /** A list of leads as the beginning of a kit, or every problem of the file. */
    public Checked<KitReading> kit(Path notes) {
        return switch (decoder.decode(notes)) {
            case Checked.Bad<SourceLines>(var problems) -> new Checked.Bad<>(problems);
            case Checked.Good<SourceLines>(SourceLines source) -> {
                LeadNotes read = LeadNotes.of(source);
                String file = name(source);
                yield new Checked.Good<>(new KitReading(source, read, new KitText(messages).write(read, file, file)));
            }
        };
    }

    private static String name(SourceLines source) {
        return Path.of(source.name()).getFileName().toString();
    }

    private static Map<String, String> inOrder(Map<String, String> facts) {
        Map<String, String> ordered = new LinkedHashMap<>();
        SheetFacts.listKeys().stream().filter(facts::containsKey).forEach(key -> ordered.put(key, facts.get(key)));
        facts.forEach(ordered::putIfAbsent);
        return ordered;
    }

    private static Checked<Order> order(Path file) {
        TradeDefaults usual = TradeDefaults.read();
        BriefReader reader = new BriefReader(usual, new SheetCompletion(usual));
        return switch (TextFile.read(file)) {
            case Checked.Bad<SourceText>(var problems) -> new Checked.Bad<>(problems);
            case Checked.Good<SourceText>(SourceText text) -> reader.readOrder(text, Optional.empty());
        };
    }

    private static <T> Optional<T> kept(Checked<T> read, List<Problem> problems) {
        return switch (read) {
            case Checked.Good<T>(T value) -> Optional.of(value);
            case Checked.Bad<T>(var bad) -> {
                problems.addAll(bad);
                yield Optional.empty();
            }
        };
    }
}
