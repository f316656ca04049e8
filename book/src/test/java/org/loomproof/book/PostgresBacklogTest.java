package org.loomproof.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.CardEvent;
import org.loomproof.book.card.CardId;
import org.loomproof.book.place.BookPlace;
import org.loomproof.book.store.Backlog;
import org.loomproof.book.store.OpenBook;
import org.loomproof.testing.Note;

/** Background work on a database server, which several servers of one business share. */
class PostgresBacklogTest extends BacklogContract {

    private static final int JOBS = 24;

    @Override
    BookPlace freshPlace() {
        return BookPlace.of(TestServer.get().newDatabase());
    }

    @Test
    void whatAKilledServerHadInHandAnotherOneTakesUpAndNothingIsDoneTwice() throws IOException, InterruptedException {
        String url = TestServer.get().newDatabase();
        try (OpenBook book = Book.create(
                        BookPlace.of(url), BookContract.PASSPHRASE, BookContract.QUICK, Clock.systemUTC())
                .orThrow()) {
            List<CardId> jobs = jobs(book);
            Process killed = server(url, "first");
            Process other = server(url, "second");
            try (BufferedReader first = killed.inputReader(StandardCharsets.UTF_8);
                    BufferedReader second = other.inputReader(StandardCharsets.UTF_8)) {
                assertThat(first.readLine()).isEqualTo("ready");
                assertThat(second.readLine()).isEqualTo("ready");
                Backlog asking = idle(book);
                jobs.forEach(job -> asking.add(task(job.value())));
                for (int begun = 0; begun < 3; begun++) {
                    assertThat(first.readLine()).startsWith("begun ");
                }
                killed.toHandle().destroyForcibly(); // in the middle of its third
                killed.waitFor();
                await(() -> jobs.stream()
                        .allMatch(job -> asking.find(KIND, job.value()).isEmpty()));
                Map<String, Integer> by = new TreeMap<>();
                for (CardId job : jobs) {
                    List<CardEvent> proven = book.cards().events(job).stream()
                            .filter(event -> event.what().equals("job.proven"))
                            .toList();
                    assertThat(proven).as("done once").hasSize(1);
                    by.merge(proven.getFirst().who().value(), 1, Integer::sum);
                }
                Note.that("tasks on two servers, one killed: %d, done by each: %s".formatted(JOBS, by));
                assertThat(by).containsOnlyKeys("first", "second");
                asking.close();
            } finally {
                killed.destroyForcibly();
                other.destroyForcibly();
            }
        }
    }

    private static List<CardId> jobs(OpenBook book) {
        List<CardId> jobs = new ArrayList<>();
        for (int i = 0; i < JOBS; i++) {
            jobs.add(book.cards()
                    .addCustomerWithJob(Author.CONSOLE, "job.called", Map.of("name", "Somebody"), Map.of("plate", "P"))
                    .id());
        }
        return jobs;
    }

    /** One that only asks: it knows the kind of work, and leaves every task to others. */
    private static Backlog idle(OpenBook book) {
        return Backlog.asking(book, List.of(KIND));
    }

    private static Process server(String url, String name) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        TaskServer.class.getName(),
                        url,
                        name)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }
}
