package org.loomproof.pages.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.Saved;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.correct.Likely;
import org.loomproof.intake.correct.ShopMemory;
import org.loomproof.intake.decode.Decoder;
import org.loomproof.intake.fact.HoldsFor;
import org.loomproof.intake.sheet.SheetFacts;
import org.loomproof.pages.desk.Memory;
import org.loomproof.pages.desk.Texts;
import org.loomproof.pages.desk.WiringNotes;
import org.loomproof.shop.notes.LineCorrection;
import org.loomproof.shop.notes.PutRight;
import org.loomproof.shop.notes.SheetReading;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.problem.ProblemText;

/** Wiring notes read on a job's page: the source beside what was understood, each field put right with one tap, and the sheet made of it. */
final class NotesPages {

    /** Notes with more circuits than this fold what is sure, so that what needs a look is not lost in between. */
    private static final int LONG = 8;

    /** More circuits than this are no page; the others are counted and read by the command. */
    private static final int MOST_SHOWN = 200;

    void show(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> show(visit, HttpStatus.OK, job, List.of()));
    }

    /** Takes notes in, pasted or as a file; corrections of those before are forgotten, for they are about other lines. */
    void read(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> {
            Optional<UploadedFile> file = Optional.of(context)
                    .filter(Context::isMultipart)
                    .flatMap(c -> Optional.ofNullable(c.uploadedFile("file")))
                    .filter(given -> given.size() > 0);
            Checked<String> lines = file.isPresent()
                    ? WiringNotes.lines(file.get().filename(), bytes(file.get()))
                    : WiringNotes.lines("notes.txt", visit.raw("text").getBytes(StandardCharsets.UTF_8));
            switch (lines) {
                case Checked.Bad<String>(List<Problem> problems) ->
                    show(visit, HttpStatus.UNPROCESSABLE_CONTENT, job, ProblemText.lines(problems, visit.messages()));
                case Checked.Good<String>(String text) -> {
                    if (keep(visit, job, "job.notes", Map.of(WiringNotes.TEXT, text, WiringNotes.RIGHT, ""))) {
                        visit.go("/jobs/" + job.id() + "/notes");
                    } else {
                        visit.refuse(HttpStatus.CONFLICT);
                    }
                }
            }
        });
    }

    private static byte[] bytes(UploadedFile file) {
        try (InputStream in = file.content()) {
            return in.readNBytes(Decoder.SIZE_LIMIT_BYTES + 1);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** One field put right. It is remembered for the shop's later sheets, where it is a suggestion and nothing more. */
    void putRight(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> {
            Memory memory = new Memory(visit.book());
            LineCorrection tap = new LineCorrection(visit.form("line") + ":" + visit.form("column") + ":"
                    + visit.form("field") + "=" + visit.form("means").replaceAll("\\s+", " "));
            Optional<PutRight> right = new WiringNotes(visit.messages()).putRight(job, memory.all(), tap);
            if (!visit.form("of").equals(mark(job)) || right.isEmpty()) {
                visit.refuse(right.isEmpty() ? HttpStatus.UNPROCESSABLE_CONTENT : HttpStatus.CONFLICT);
                return;
            }
            if (!keep(visit, job, "job.notes-right", Map.of(WiringNotes.RIGHT, WiringNotes.with(job, tap)))) {
                visit.refuse(HttpStatus.CONFLICT);
                return;
            }
            memory.add(visit.author(), right.orElseThrow().made().getLast());
            visit.go("/jobs/" + job.id() + "/notes#at-" + visit.form("line") + "-" + visit.form("column"));
        });
    }

    /** What a person tells of the vehicle, so that lines for some vehicles only are decided. Only what these notes ask is taken. */
    void tell(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> {
            Map<String, String> told = new HashMap<>();
            Map<String, Set<String>> asks = new WiringNotes(visit.messages())
                    .read(job, new Memory(visit.book()).all(), Map.of())
                    .map(NotesPages::asks)
                    .orElse(Map.of());
            asks.forEach((key, values) -> {
                String is = visit.form("is-" + key);
                boolean known = is.isEmpty() || is.equals(HoldsFor.SOMETHING_ELSE) || values.contains(is);
                told.put(key, known ? is : "");
            });
            if (told.isEmpty()
                    || !keep(
                            visit,
                            job,
                            "job.notes-vehicle",
                            Map.of(WiringNotes.VEHICLE, WiringNotes.with(job, told)))) {
                visit.refuse(HttpStatus.CONFLICT);
                return;
            }
            visit.go("/jobs/" + job.id() + "/notes#which");
        });
    }

    private static Map<String, Set<String>> asks(SheetReading reading) {
        return HoldsFor.asks(
                reading.notes().entries().stream().map(Entry::validity).toList());
    }

    /** Makes the sheet of the notes and keeps it when it can be used; otherwise it is shown as text with everything that is wrong with it. */
    void take(Context context) {
        Visit visit = Visit.of(context);
        JobPages.job(visit).ifPresent(job -> {
            Map<String, String> facts = new HashMap<>(WiringNotes.told(job));
            SheetFacts.listKeys().stream()
                    .filter(key -> !visit.form(key).isEmpty())
                    .forEach(key -> facts.put(key, visit.form(key)));
            WiringNotes notes = new WiringNotes(visit.messages());
            ShopMemory memory = new Memory(visit.book()).all();
            Optional<SheetReading> reading =
                    visit.form("into").isEmpty() ? notes.read(job, memory, facts) : notes.merged(job, memory);
            if (reading.isEmpty()) {
                visit.refuse(HttpStatus.CONFLICT);
                return;
            }
            String sheet = reading.orElseThrow().text();
            List<String> problems = new Texts(visit.messages()).problems("sheet", sheet, Optional.of(job));
            if (problems.isEmpty()) {
                JobPages.save(visit, "text-again", job, "job.sheet", Map.of("sheet", sheet));
            } else {
                PlanPages.showText(visit, HttpStatus.UNPROCESSABLE_CONTENT, "sheet", job, sheet, problems);
            }
        });
    }

    /** Keeps entries that no other page writes, unless somebody changed the notes meanwhile; a change of anything else is no reason to refuse. */
    private static boolean keep(Visit visit, Card job, String what, Map<String, String> entries) {
        Saved saved = visit.book()
                .cards()
                .amend(job, visit.author(), what, now -> mark(now).equals(mark(job)) ? entries : Map.of());
        return saved instanceof Saved.Done(Card now)
                && now.entries().differing(entries).isEmpty();
    }

    /** What a form must have been made from: these notes, with this many corrections. */
    private static String mark(Card job) {
        return Integer.toHexString((job.get(WiringNotes.TEXT) + "\n" + job.get(WiringNotes.RIGHT)).hashCode());
    }

    private static void show(Visit visit, HttpStatus status, Card job, List<String> problems) {
        WiringNotes notes = new WiringNotes(visit.messages());
        ShopMemory memory = new Memory(visit.book()).all();
        Optional<SheetReading> reading = notes.read(job, memory, WiringNotes.facts(job));
        Map<String, Object> shown = new HashMap<>();
        shown.put("job", job);
        shown.put("problems", problems);
        shown.put("reading", reading);
        shown.put("merge", notes.merged(job, memory).flatMap(SheetReading::merge));
        shown.put("mark", mark(job));
        shown.put("most", MOST_SHOWN);
        Map<String, String> facts =
                new HashMap<>(reading.map(read -> read.vehicle().values()).orElse(Map.of()));
        facts.putAll(WiringNotes.facts(job));
        shown.put("facts", facts);
        shown.put("needed", new ArrayList<>(SheetFacts.listMissing(Map.of()).entrySet()));
        shown.put("roles", Likely.allRoles());
        shown.put("asks", reading.map(NotesPages::asks).orElse(Map.of()));
        shown.put("told", WiringNotes.told(job));
        shown.put("folds", reading.map(read -> read.review().size() > LONG).orElse(false));
        visit.show(status, "notes/notes", shown);
    }
}
