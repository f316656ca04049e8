package org.loomproof.pages.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardId;
import org.loomproof.book.store.OpenBook;
import org.loomproof.book.work.Task;
import org.loomproof.book.work.TaskWatch;
import org.loomproof.pages.desk.Planning;
import org.loomproof.workshop.words.Messages;

/**
 * A job of the bakery's van, or of a car of two cut wires where less will do, checked in, planned, proven and with every fault tried by a real
 * run; the run of either is made once and its results are put with every further job.
 */
final class ProvenJob {

    static final String CUSTOMER = "Odile Brandt-Øster";
    static final String PHONE = "0155 7700 1234";

    private static final Path VAN = Path.of("..", "examples", "bakery-van");

    private static final Path SMALL = Path.of("..", "examples", "circuits", "starter-with-two-wires");

    private static final Map<Path, Run> RUNS = new HashMap<>();

    /** What a run leaves: entries of the job, and what is attached to it. */
    private record Run(Map<String, String> entries, Map<String, byte[]> attached) {}

    private ProvenJob() {}

    /** Somebody who waits for the end. */
    private enum Patient implements TaskWatch {
        HERE;

        @Override
        public void stage(String name) {}

        @Override
        public void counted(int done, int all) {}

        @Override
        public boolean isOver() {
            return false;
        }

        @Override
        public void goOn() {}
    }

    /** One that is planned and proven, and of which no fault was tried: what takes longest is left out. */
    static CardId untried(OpenBook book) {
        CardId job = checkedIn(book, VAN, Map.of());
        try {
            new Planning(book, Messages.english())
                    .run(Task.asked("plan", job.value(), Author.CONSOLE, "en"), Hasty.HERE);
        } catch (Enough ignored) {
            // what was kept until then is all that is wanted
        }
        return job;
    }

    private static final class Enough extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    /** Somebody who goes away when the faults begin. */
    private enum Hasty implements TaskWatch {
        HERE;

        @Override
        public void stage(String name) {
            if (name.equals("trying_faults")) {
                throw new Enough();
            }
        }

        @Override
        public void counted(int done, int all) {}

        @Override
        public boolean isOver() {
            return false;
        }

        @Override
        public void goOn() {}
    }

    /** A fresh one. */
    static CardId in(OpenBook book) {
        return in(book, Map.of());
    }

    /** A fresh one, with these entries besides. */
    static CardId in(OpenBook book, Map<String, String> more) {
        return of(VAN, book, more);
    }

    /** A fresh one of the car of two cut wires: a tenth of the work, for what proves it or tries its faults over and over. */
    static CardId small(OpenBook book, Map<String, String> more) {
        return of(SMALL, book, more);
    }

    private static synchronized CardId of(Path example, OpenBook book, Map<String, String> more) {
        CardId job = checkedIn(book, example, more);
        Run run = RUNS.get(example);
        if (run == null) {
            new Planning(book, Messages.english())
                    .run(Task.asked("plan", job.value(), Author.CONSOLE, "en"), Patient.HERE);
            RUNS.put(example, left(book, job));
        } else {
            run.attached().forEach((label, bytes) -> book.attachments().add(job, Author.CONSOLE, label, bytes));
            book.cards().change(job, 1, Author.CONSOLE, "job.proven", run.entries());
        }
        return job;
    }

    private static Run left(OpenBook book, CardId job) {
        Card done = book.cards().find(job).orElseThrow();
        Map<String, String> entries = new HashMap<>();
        List.of("run", "verdict", "sum", "holds", "broken", "open", "kit-name", "parts", "stage")
                .forEach(name -> entries.put(name, done.get(name)));
        Map<String, byte[]> attached = new LinkedHashMap<>();
        book.attachments()
                .of(job)
                .forEach(label -> attached.put(
                        label.label(), book.attachments().open(job, label.id()).orElseThrow()));
        return new Run(entries, attached);
    }

    private static CardId checkedIn(OpenBook book, Path example, Map<String, String> more) {
        Map<String, String> entries = new HashMap<>(Map.of(
                "make", "Fennick",
                "model", "Drayling",
                "plate", "QX 481 LM",
                "checked-in", "2026-11-26",
                "sleep-milliamps", "22",
                "hidden", "behind the glove box"));
        for (String text : List.of("sheet", "kit", "order")) {
            try {
                entries.put(text, Files.readString(example.resolve(text + ".yaml")));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        entries.putAll(more);
        return book.cards()
                .addCustomerWithJob(Author.CONSOLE, "job.called", Map.of("name", CUSTOMER, "phone", PHONE), entries)
                .id();
    }
}
