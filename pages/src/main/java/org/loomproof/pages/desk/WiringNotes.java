package org.loomproof.pages.desk;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.loomproof.book.card.Card;
import org.loomproof.intake.check.ReadNotes;
import org.loomproof.intake.correct.ShopMemory;
import org.loomproof.intake.decode.Decoder;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.decode.SourceLines;
import org.loomproof.intake.sheet.TableEntries;
import org.loomproof.shop.job.TextRun;
import org.loomproof.shop.notes.LineCorrection;
import org.loomproof.shop.notes.NotesRun;
import org.loomproof.shop.notes.PutRight;
import org.loomproof.shop.notes.SheetReading;
import org.loomproof.workshop.brief.order.Order;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.words.Messages;

/** Wiring notes of a job: their lines and what a person put right in them are kept with the job; what is understood is read anew each time. */
public final class WiringNotes {

    /** The entry with the lines of the notes. */
    public static final String TEXT = "wiring-notes";

    /** The entry with the corrections, a line each. */
    public static final String RIGHT = "wiring-notes-right";

    /** The entry with what a person told of the vehicle, for lines that hold for some vehicles only: {@code gearbox=manual}, a line each. */
    public static final String VEHICLE = "wiring-notes-vehicle";

    private static final String FILE = "notes.txt";

    private final Messages messages;

    public WiringNotes(Messages messages) {
        this.messages = messages;
    }

    /** The lines in whatever was given, as they are kept; or the problem that keeps them from being read. */
    public static Checked<String> lines(String name, byte[] bytes) {
        return switch (new Decoder().decode(name, bytes)) {
            case Checked.Good<SourceLines>(SourceLines source) ->
                new Checked.Good<>(source.lines().stream().map(Passage::text).collect(Collectors.joining("\n")));
            case Checked.Bad<SourceLines>(var problems) -> new Checked.Bad<>(problems);
        };
    }

    /** What is understood of a job's notes, as put right so far. */
    public Optional<SheetReading> read(Card job, ShopMemory memory, Map<String, String> facts) {
        return read(job, memory, facts, Optional.empty());
    }

    /** The same merged into the job's own sheet as it stands; nothing while that cannot be used, or when it says all of it already. */
    public Optional<SheetReading> merged(Card job, ShopMemory memory) {
        return sheet(job)
                .flatMap(sheet -> read(job, memory, told(job), Optional.of(sheet))
                        .filter(merged -> merged.merge()
                                .filter(merge -> !merge.sheet().equals(sheet))
                                .isPresent()));
    }

    private Optional<SheetReading> read(Card job, ShopMemory memory, Map<String, String> facts, Optional<Sheet> into) {
        return source(job)
                .flatMap(source -> putRight(job, source, memory, "")
                        .map(right -> new NotesRun(messages).read(source, right, facts, order(job), into)));
    }

    private Optional<Sheet> sheet(Card job) {
        return switch (new TextRun(messages).briefs().readSheet(Planning.text(job, "sheet"))) {
            case Checked.Good<Sheet>(Sheet sheet) -> Optional.of(sheet);
            case Checked.Bad<Sheet> ignored -> Optional.empty();
        };
    }

    /** The notes of a job with one correction more; nothing when it cannot be made. */
    public Optional<PutRight> putRight(Card job, ShopMemory memory, LineCorrection more) {
        return source(job).flatMap(source -> putRight(job, source, memory, more.written()));
    }

    /** The corrections of a job and one more, as they are kept. */
    public static String with(Card job, LineCorrection more) {
        return (job.get(RIGHT) + "\n" + more.written()).strip();
    }

    private static Optional<SourceLines> source(Card job) {
        byte[] bytes = job.get(TEXT).getBytes(StandardCharsets.UTF_8);
        return bytes.length == 0
                        || !(new Decoder().decode(FILE, bytes) instanceof Checked.Good<SourceLines>(var source))
                ? Optional.empty()
                : Optional.of(source);
    }

    private static Optional<PutRight> putRight(Card job, SourceLines source, ShopMemory memory, String more) {
        List<LineCorrection> corrections = (job.get(RIGHT) + "\n" + more)
                .lines()
                .filter(line -> !line.isBlank())
                .map(LineCorrection::new)
                .toList();
        ReadNotes asRead = TableEntries.of(source).orElseGet(() -> ReadNotes.of(source));
        return switch (PutRight.of(source, asRead, memory, corrections)) {
            case Checked.Good<PutRight>(PutRight right) -> Optional.of(right);
            case Checked.Bad<PutRight> ignored -> Optional.empty();
        };
    }

    private Optional<Order> order(Card job) {
        return switch (new TextRun(messages).briefs().readOrder(Planning.text(job, "order"), Optional.empty())) {
            case Checked.Good<Order>(Order order) -> Optional.of(order);
            case Checked.Bad<Order> ignored -> Optional.empty();
        };
    }

    /** What a person told of the vehicle, by its keys. */
    public static Map<String, String> told(Card job) {
        Map<String, String> told = new LinkedHashMap<>();
        job.get(VEHICLE)
                .lines()
                .map(line -> line.split("=", 2))
                .filter(pair -> pair.length == 2)
                .forEach(pair -> told.put(pair[0], pair[1]));
        return told;
    }

    /** What is told of the vehicle now, those of earlier notes among it: an empty value is told no longer. */
    public static String with(Card job, Map<String, String> told) {
        Map<String, String> all = told(job);
        all.putAll(told);
        return all.entrySet().stream()
                .filter(fact -> !fact.getValue().isBlank())
                .map(fact -> fact.getKey() + "=" + fact.getValue())
                .collect(Collectors.joining("\n"));
    }

    /** What is known of the vehicle without asking, its name, of make, model and year; and what was told. */
    public static Map<String, String> facts(Card job) {
        Map<String, String> facts = told(job);
        String name = (job.get("make") + " " + job.get("model") + " " + job.get("year")).strip();
        if (!name.isEmpty()) {
            facts.put("name", name.replaceAll("\\s+", " "));
        }
        return facts;
    }
}
