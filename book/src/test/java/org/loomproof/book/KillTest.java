package org.loomproof.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
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
    private static final int MOST_ANSWERS = 40;
    private static final int LANES = 3;
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

    /** Several at once, each with books of its own: a kill then also comes while the disk is busy with others. */
    private Count killed(String kind, int kills) {
        Writers writers = Writers.in(folder);
        try (ExecutorService lanes = Executors.newFixedThreadPool(LANES)) {
            List<Future<Count>> counts = IntStream.range(0, LANES)
                    .mapToObj(lane -> lanes.submit(
                            () -> killed(writers, kind, (kills + lane) / LANES, new Random(Sample.seed() + lane))))
                    .toList();
            Count all = new Count(0, 0);
            for (Future<Count> count : counts) {
                all = all.plus(count.get());
            }
            return all;
        } catch (ExecutionException e) {
            throw new AssertionError(e.getCause());
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private Count killed(Writers writers, String kind, int kills, Random chance) {
        Count count = new Count(0, 0);
        Path file = folder.resolve("unset");
        for (int kill = 0; kill < kills; kill++) {
            if (kill % KILLS_A_BOOK == 0) {
                file = folder.resolve(kind + "-" + UUID.randomUUID() + ".book");
                Book.create(new BookPlace.InFile(file), BookContract.PASSPHRASE, BookContract.QUICK, Clock.systemUTC())
                        .orThrow()
                        .close();
            }
            List<String> answers = writers.answersUntilKilled(
                    file, kind, 1 + chance.nextInt(MOST_ANSWERS), chance.nextInt(MOST_MICROS));
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
}
