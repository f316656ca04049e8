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
 * A job of the bakery's van, checked in, planned, proven and with every fault tried by a real run; the run is made once and its
 * results are put with every further job.
 */
final class ProvenJob {

    static final String CUSTOMER = "Odile Brandt-Øster";
    static final String PHONE = "0155 7700 1234";

    private static final Path VAN = Path.of("..", "examples", "bakery-van");

    private static final Map<String, String> ENTRIES = new HashMap<>();
    private static final Map<String, byte[]> KEPT = new LinkedHashMap<>();

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
        CardId job = checkedIn(book, Map.of());
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
    static synchronized CardId in(OpenBook book, Map<String, String> more) {
        CardId job = checkedIn(book, more);
        if (KEPT.isEmpty()) {
            new Planning(book, Messages.english())
                    .run(Task.asked("plan", job.value(), Author.CONSOLE, "en"), Patient.HERE);
            Card done = book.cards().find(job).orElseThrow();
            List.of("run", "verdict", "sum", "holds", "broken", "open", "kit-name", "parts", "stage")
                    .forEach(name -> ENTRIES.put(name, done.get(name)));
            book.attachments()
                    .of(job)
                    .forEach(label -> KEPT.put(
                            label.label(),
                            book.attachments().open(job, label.id()).orElseThrow()));
        } else {
            KEPT.forEach((label, bytes) -> book.attachments().add(job, Author.CONSOLE, label, bytes));
            book.cards().change(job, 1, Author.CONSOLE, "job.proven", ENTRIES);
        }
        return job;
    }

    private static CardId checkedIn(OpenBook book, Map<String, String> more) {
        Map<String, String> entries = new HashMap<>(Map.of(
                "make", "Fennick",
                "model", "Drayling",
                "plate", "QX 481 LM",
                "checked-in", "2026-11-26",
                "sleep-milliamps", "22",
                "hidden", "behind the glove box"));
        for (String text : List.of("sheet", "kit", "order")) {
            try {
                entries.put(text, Files.readString(VAN.resolve(text + ".yaml")));
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
