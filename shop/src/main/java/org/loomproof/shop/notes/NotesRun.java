package org.loomproof.shop.notes;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.loomproof.intake.check.ReadNotes;
import org.loomproof.intake.correct.ShopMemory;
import org.loomproof.intake.decode.Decoder;
import org.loomproof.intake.decode.SourceLines;
import org.loomproof.intake.fact.VehicleFacts;
import org.loomproof.intake.kit.KitText;
import org.loomproof.intake.kit.LeadNotes;
import org.loomproof.intake.sheet.CleanTable;
import org.loomproof.intake.sheet.DraftSheet;
import org.loomproof.intake.sheet.Merge;
import org.loomproof.intake.sheet.Needs;
import org.loomproof.intake.sheet.SheetFacts;
import org.loomproof.intake.sheet.SheetText;
import org.loomproof.intake.sheet.TableEntries;
import org.loomproof.workshop.brief.complete.SheetCompletion;
import org.loomproof.workshop.brief.order.Order;
import org.loomproof.workshop.brief.read.BriefReader;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.brief.text.TextFile;
import org.loomproof.workshop.brief.write.SheetWriter;
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
     * What is asked of wiring notes.
     *
     * @param notes the file
     * @param facts the vehicle's, as written behind their keys; what is missing is asked for
     * @param order what is wanted: circuits that it needs and the notes lack are listed
     * @param into a sheet that the notes are merged into; its facts of the vehicle then hold
     * @param memory the file with what the shop remembers; with corrections it may not be there yet
     * @param corrections what a person puts right in this reading
     */
    public record SheetWanted(
            Path notes,
            Map<String, String> facts,
            Optional<Path> order,
            Optional<Path> into,
            Optional<Path> memory,
            List<LineCorrection> corrections) {

        public SheetWanted {
            corrections = List.copyOf(corrections);
        }
    }

    /** Wiring notes as a sheet, or every problem of the files. */
    public Checked<SheetReading> sheet(SheetWanted wanted) {
        List<Problem> problems = new ArrayList<>();
        Optional<SourceLines> source = decoder.decode(wanted.notes()).orTell(problems);
        Optional<Order> order = wanted.order().flatMap(file -> order(file).orTell(problems));
        Optional<Sheet> into = wanted.into().flatMap(file -> sheet(file).orTell(problems));
        Optional<ShopMemory> memory = wanted.memory()
                .flatMap(file ->
                        MemoryFile.read(file, !wanted.corrections().isEmpty()).orTell(problems));
        if (!problems.isEmpty()) {
            return new Checked.Bad<>(problems);
        }
        SourceLines lines = source.orElseThrow();
        ReadNotes asRead = TableEntries.of(lines).orElseGet(() -> ReadNotes.of(lines));
        return switch (PutRight.of(lines, asRead, memory.orElse(ShopMemory.empty()), wanted.corrections())) {
            case Checked.Bad<PutRight>(var wrong) -> new Checked.Bad<>(wrong);
            case Checked.Good<PutRight>(PutRight right) ->
                new Checked.Good<>(read(lines, right, wanted.facts(), order, into));
        };
    }

    /** Wiring notes that were decoded and put right, as a sheet. */
    public SheetReading read(
            SourceLines source,
            PutRight right,
            Map<String, String> facts,
            Optional<Order> order,
            Optional<Sheet> into) {
        ReadNotes notes = right.notes();
        Set<String> taken = into.map(
                        s -> s.circuits().stream().map(c -> c.id().value()).collect(Collectors.toSet()))
                .orElse(Set.of());
        Map<String, String> forSheet = inOrder(facts);
        Map<String, String> known = new HashMap<>(facts);
        into.ifPresent(s -> known.putAll(SheetFacts.of(s.vehicle())));
        DraftSheet draft = DraftSheet.of(notes, name(source), known, taken);
        Optional<Merge> merge = into.map(s -> Merge.of(s, draft));
        List<CircuitRole> roles = merge.map(m -> m.sheet().circuits()).orElse(draft.circuits()).stream()
                .map(Circuit::role)
                .toList();
        VehicleFacts vehicle = VehicleFacts.of(source);
        return new SheetReading(
                source,
                notes,
                right.review(),
                right.memory(),
                draft,
                order.map(o -> Needs.listMissing(o, roles)).orElse(List.of()),
                vehicle,
                merge.isPresent() ? Map.of() : SheetFacts.listMissing(forSheet),
                merge,
                merge.map(m -> SheetWriter.write(m.sheet()))
                        .orElseGet(() -> new SheetText(messages).write(draft, forSheet, vehicle)),
                CleanTable.write(notes.entries().stream()
                        .map(e -> CleanTable.row(e, name(source)))
                        .toList()));
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
        ordered.entrySet().removeIf(fact -> SheetFacts.isOfNotesOnly(fact.getKey(), fact.getValue()));
        return ordered;
    }

    private static Checked<Order> order(Path file) {
        return read(file, text -> briefs().readOrder(text, Optional.empty()));
    }

    private static Checked<Sheet> sheet(Path file) {
        return read(file, text -> briefs().readSheet(text));
    }

    private static BriefReader briefs() {
        TradeDefaults usual = TradeDefaults.read();
        return new BriefReader(usual, new SheetCompletion(usual));
    }

    private static <T> Checked<T> read(Path file, Function<SourceText, Checked<T>> reader) {
        return switch (TextFile.read(file)) {
            case Checked.Bad<SourceText>(var problems) -> new Checked.Bad<>(problems);
            case Checked.Good<SourceText>(SourceText text) -> reader.apply(text);
        };
    }
}
