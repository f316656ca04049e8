package org.loomproof.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardId;
import org.loomproof.book.place.BookPlace;
import org.loomproof.book.store.OpenBook;
import org.loomproof.testing.Note;
import org.loomproof.testing.Sample;

/** A writer is killed (SIGKILL) at moments drawn by chance. What it answered is in the book, and the book opens each time. */
class KillTest {

    private static final int KILLS_A_BOOK = 50;
    private static final int MOST_ANSWERS = 120;
    private static final int MOST_MICROS = 8_000;

    @TempDir
    private Path folder;

    /**
     * What killing came to.
     *
     * @param answered writes that were answered
     * @param found of these those that were in the book afterwards
     */
    private record Count(int answered, int found) {
        Count plus(Count other) {
            return new Count(answered + other.answered, found + other.found);
        }
    }

    @Test
    void noAnsweredWriteIsMissingAfterAKill() {
        int kills = Sample.count(12, 1_000);
        Count count = killed("honest", kills);
        Note.that("writers killed: %,d; writes answered: %,d, found afterwards: %,d"
                .formatted(kills, count.answered(), count.found()));
        assertThat(count.answered()).as("the writers wrote").isGreaterThan(kills);
        assertThat(count.found()).isEqualTo(count.answered());
    }

    /** The test of the test: a writer that answers before it commits is caught. */
    @Test
    void aWriterThatAnswersBeforeItCommitsIsCaught() {
        Count count = new Count(0, 0);
        int kills = 0;
        while (count.found() == count.answered() && kills < 40) {
            count = count.plus(killed("hasty", 4));
            kills += 4;
        }
        Note.that("writers that answer before they commit: %d killed, %d answered writes missing"
                .formatted(kills, count.answered() - count.found()));
        assertThat(count.found()).isLessThan(count.answered());
    }

    private Count killed(String kind, int kills) {
        Random chance = new Random(Sample.seed());
        Count count = new Count(0, 0);
        Path file = folder.resolve("unset");
        for (int kill = 0; kill < kills; kill++) {
            if (kill % KILLS_A_BOOK == 0) {
                file = folder.resolve(kind + "-" + System.nanoTime() + ".book");
                Book.create(new BookPlace.InFile(file), BookContract.PASSPHRASE, BookContract.QUICK, Clock.systemUTC())
                        .orThrow()
                        .close();
            }
            List<String> answers =
                    answersUntilKilled(file, kind, 1 + chance.nextInt(MOST_ANSWERS), chance.nextInt(MOST_MICROS));
            try (OpenBook book = Book.open(new BookPlace.InFile(file), BookContract.PASSPHRASE, Clock.systemUTC())
                    .orThrow()) {
                int found = (int)
                        answers.stream().filter(answer -> isIn(book, answer)).count();
                count = count.plus(new Count(answers.size(), found));
                if (kill % KILLS_A_BOOK == KILLS_A_BOOK - 1 || kill == kills - 1) {
                    assertThat(book.check().orThrow()).as("every seal opens").isPositive();
                }
            }
        }
        return count;
    }

    private static boolean isIn(OpenBook book, String answer) {
        String[] words = answer.split(" ", -1);
        int version = words[0].equals("added") ? 1 : Integer.parseInt(words[2]);
        return book.cards().find(new CardId(words[1])).map(Card::version).orElse(0) >= version;
    }

    private static List<String> answersUntilKilled(Path file, String kind, int enough, int micros) {
        String classes = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        ProcessBuilder start = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "--enable-native-access=ALL-UNNAMED",
                        "-cp",
                        classes,
                        KilledWriter.class.getName(),
                        file.toString(),
                        kind)
                .redirectError(ProcessBuilder.Redirect.DISCARD);
        try {
            Process writer = start.start();
            List<String> answers = new ArrayList<>();
            try (BufferedReader reader = writer.inputReader(StandardCharsets.UTF_8)) {
                String line = reader.readLine();
                while (line != null) {
                    answers.add(line);
                    if (answers.size() == enough) {
                        boolean ended = writer.waitFor(micros, TimeUnit.MICROSECONDS);
                        assertThat(ended).as("only a kill ends a writer").isFalse();
                        writer.toHandle().destroyForcibly(); // by its handle: what it answered stays readable
                    }
                    line = reader.readLine();
                }
            }
            writer.waitFor();
            assertThat(answers).as("the writer opened the book and wrote").hasSizeGreaterThanOrEqualTo(enough);
            return answers;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
