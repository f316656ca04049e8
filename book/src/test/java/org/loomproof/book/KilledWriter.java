package org.loomproof.book;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.Card;
import org.loomproof.book.place.BookPlace;
import org.loomproof.book.store.OpenBook;

/**
 * Writes into a book from four threads until it is killed, and answers on its output: a line a write, {@code added ID} or {@code
 * changed ID VERSION}. An honest one answers when the write has returned; a hasty one, planted for the test's own sake, before. A
 * writer of no kind writes once and ends.
 */
final class KilledWriter {

    private static final int THREADS = 4;

    private KilledWriter() {}

    public static void main(String[] arguments) {
        boolean hasty = arguments[1].equals("hasty");
        OpenBook book = Book.open(
                        new BookPlace.InFile(Path.of(arguments[0])), BookContract.PASSPHRASE, Clock.systemUTC())
                .orThrow();
        if (arguments[1].equals("none")) {
            book.cards()
                    .addCustomerWithJob(Author.CONSOLE, "job.called", Map.of("name", "Nobody"), Map.of("plate", "-"));
            book.close();
            return;
        }
        for (int thread = 0; thread < THREADS; thread++) {
            new Thread(() -> write(book, hasty)).start();
        }
    }

    private static void write(OpenBook book, boolean hasty) {
        while (true) {
            Card job = book.cards()
                    .addCustomerWithJob(
                            Author.CONSOLE, "job.called", Map.of("name", "Somebody"), Map.of("plate", "ON THE DISK"));
            answer("added " + job.id());
            for (int version = 1; version < 4; version++) {
                String line = "changed " + job.id() + " " + (version + 1);
                if (hasty) {
                    answer(line);
                }
                book.cards()
                        .change(
                                job.id(),
                                version,
                                Author.CONSOLE,
                                "job.corrected",
                                Map.of("note", "n".repeat(version * 500)));
                if (!hasty) {
                    answer(line);
                }
            }
        }
    }

    private static void answer(String line) {
        PrintStream out = System.out;
        synchronized (out) {
            out.println(line);
            if (out.checkError()) {
                Runtime.getRuntime().halt(1); // whoever was to kill this program is gone
            }
        }
    }
}
