package org.loomproof.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.CardId;
import org.loomproof.book.key.Passphrase;
import org.loomproof.book.place.BookPlace;
import org.loomproof.book.place.Tried;
import org.loomproof.book.store.Backlog;
import org.loomproof.book.store.OpenBook;
import org.loomproof.book.work.Task;
import org.loomproof.book.work.TaskProgress;
import org.loomproof.book.work.TaskWatch;
import org.loomproof.book.work.Worker;

/** What is promised of long work in the background, wherever the book lies. */
abstract class BacklogContract {

    static final String KIND = "proof";
    static final Backlog.Pace QUICK =
            new Backlog.Pace(Duration.ofMillis(100), Duration.ofMillis(500), Duration.ofMillis(50));

    @TempDir
    Path folder;

    private BookPlace place = new BookPlace.InFile(Path.of("unset"));

    abstract BookPlace freshPlace();

    @BeforeEach
    void makeBook() {
        place = freshPlace();
        Book.create(place, BookContract.PASSPHRASE, BookContract.QUICK, Clock.systemUTC())
                .orThrow()
                .close();
    }

    private OpenBook open() {
        return Book.open(place, BookContract.PASSPHRASE, Clock.systemUTC()).orThrow();
    }

    static Backlog backlog(OpenBook book, Worker worker) {
        return Backlog.start(book, Map.of(KIND, worker), notToday(), backlog -> {}, QUICK);
    }

    private static LocalTime notToday() {
        return LocalTime.now(ZoneId.systemDefault()).minusMinutes(5);
    }

    static Task task(String subject) {
        return Task.asked(KIND, subject, Author.CONSOLE, "en");
    }

    /** Bounded patience: what never comes fails the test. */
    static void await(BooleanSupplier what) {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(120);
        while (!what.getAsBoolean()) {
            assertThat(System.nanoTime()).as("it never came").isLessThan(end);
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(20)); // asked again and again, never waited for blindly
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(120, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Works until it is told to leave off, as a proof does. */
    private static void workOn(TaskWatch watch) {
        while (true) {
            watch.goOn();
            Thread.onSpinWait();
        }
    }

    @Test
    void aTaskIsDoneAsItWasAskedForAndItsProgressIsToldMeanwhile() {
        String job = CardId.fresh().value();
        CountDownLatch looked = new CountDownLatch(1);
        ConcurrentLinkedQueue<Task> done = new ConcurrentLinkedQueue<>();
        try (OpenBook book = open();
                Backlog backlog = backlog(book, (task, watch) -> {
                    watch.stage("planning");
                    watch.counted(3, 7);
                    await(looked);
                    done.add(task);
                })) {
            assertThat(backlog.find(KIND, job)).isEmpty();
            assertThat(backlog.add(task(job))).isTrue();
            await(() -> backlog.find(KIND, job).equals(Optional.of(new TaskProgress("planning", 3, 7))));
            assertThat(backlog.add(task(job))).as("one at a time").isFalse();
            looked.countDown();
            await(() -> backlog.find(KIND, job).isEmpty());
            assertThat(done).extracting(Task::subject).containsExactly(job);
            assertThat(backlog.add(task(job))).as("and again, later").isTrue();
            await(() -> done.size() == 2);
        }
    }

    @Test
    void whatIsStoppedIsNotGoneOnWith() {
        String first = CardId.fresh().value();
        String second = CardId.fresh().value();
        ConcurrentLinkedQueue<String> begun = new ConcurrentLinkedQueue<>();
        try (OpenBook book = open();
                Backlog backlog = backlog(book, (task, watch) -> {
                    begun.add(task.subject());
                    workOn(watch);
                })) {
            backlog.add(task(first));
            await(() -> !begun.isEmpty());
            backlog.add(task(second));
            backlog.stop(KIND, second);
            assertThat(backlog.find(KIND, second)).as("it only waited").isEmpty();
            backlog.stop(KIND, first);
            await(() -> backlog.find(KIND, first).isEmpty());
        }
        assertThat(begun).containsExactly(first);
    }

    @Test
    void aTaskSurvivesARestartAndWaitsWhileTheBookIsLocked() {
        String job = CardId.fresh().value();
        CountDownLatch begun = new CountDownLatch(1);
        try (OpenBook book = open();
                Backlog backlog = backlog(book, (task, watch) -> {
                    begun.countDown();
                    workOn(watch);
                })) {
            backlog.add(task(job));
            await(begun);
        }
        AtomicInteger done = new AtomicInteger();
        assertThat(Book.open(place, Passphrase.of("another one altogether"), Clock.systemUTC()))
                .as("locked: nothing can even begin")
                .isInstanceOf(Tried.Not.class);
        try (OpenBook book = open();
                Backlog backlog = backlog(book, (task, watch) -> done.incrementAndGet())) {
            await(() -> done.get() == 1 && backlog.find(KIND, job).isEmpty());
        }
    }

    @Test
    void whatGoesWrongIsTriedAgainAndGivenUpInTheEnd() {
        String once = CardId.fresh().value();
        String always = CardId.fresh().value();
        ConcurrentLinkedQueue<String> tried = new ConcurrentLinkedQueue<>();
        try (OpenBook book = open();
                Backlog backlog = backlog(book, (task, watch) -> {
                    boolean first = !tried.contains(task.subject());
                    tried.add(task.subject());
                    if (first || task.subject().equals(always)) {
                        throw new IllegalStateException("planted");
                    }
                })) {
            backlog.add(task(once));
            backlog.add(task(always));
            await(() ->
                    backlog.find(KIND, always).filter(TaskProgress::isFailed).isPresent());
            await(() -> backlog.find(KIND, once).isEmpty());
            assertThat(tried).hasSize(2 + 3);
            assertThat(backlog.add(task(always))).as("somebody may ask again").isTrue();
        }
    }

    @Test
    void twoServersShareAndNoTaskIsDoneTwice() {
        List<String> jobs =
                IntStream.range(0, 24).mapToObj(i -> CardId.fresh().value()).toList();
        ConcurrentLinkedQueue<String> ofOne = new ConcurrentLinkedQueue<>();
        ConcurrentLinkedQueue<String> ofTheOther = new ConcurrentLinkedQueue<>();
        try (OpenBook book = open();
                OpenBook same = open();
                Backlog one = backlog(book, (task, watch) -> slowly(task, ofOne));
                Backlog other = backlog(same, (task, watch) -> slowly(task, ofTheOther))) {
            jobs.forEach(job -> one.add(task(job)));
            await(() -> jobs.stream().allMatch(job -> other.find(KIND, job).isEmpty()));
        }
        assertThat(ofOne).isNotEmpty().doesNotHaveDuplicates();
        assertThat(ofTheOther).isNotEmpty().doesNotHaveDuplicates().doesNotContainAnyElementsOf(ofOne);
        assertThat(ofOne.size() + ofTheOther.size()).isEqualTo(jobs.size());
    }

    private static void slowly(Task task, ConcurrentLinkedQueue<String> done) {
        LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(60)); // the work itself, so that the other server gets some
        done.add(task.subject());
    }

    @Test
    void whatSomebodyWaitsForGoesBeforeWhatNobodyWaitsFor() {
        String first = CardId.fresh().value();
        List<String> night =
                IntStream.range(0, 6).mapToObj(i -> CardId.fresh().value()).toList();
        String job = CardId.fresh().value();
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch goOn = new CountDownLatch(1);
        ConcurrentLinkedQueue<String> order = new ConcurrentLinkedQueue<>();
        try (OpenBook book = open();
                Backlog backlog = backlog(book, (task, watch) -> {
                    order.add(task.subject());
                    if (task.subject().equals(first)) {
                        begun.countDown();
                        await(goOn);
                    }
                });
                OpenBook same = open();
                Backlog beside = Backlog.asking(same, List.of(KIND))) {
            backlog.addBehind(task(first));
            await(begun);
            night.forEach(fit -> beside.addBehind(task(fit)));
            assertThat(beside.add(task(job))).as("asked last of all").isTrue();
            goOn.countDown();
            await(() -> order.size() == night.size() + 2);
        }
        List<String> done = new ArrayList<>(order);
        assertThat(done.indexOf(job))
                .as("behind the one in hand, and one more at most that was looked ahead to")
                .isBetween(1, 2);
        done.removeAll(List.of(first, job));
        assertThat(done).as("of equals the first first").containsExactlyElementsOf(night);
    }

    @Test
    void whatIsToBeDoneEveryNightIsDoneByOneOfTheServers() {
        AtomicInteger nights = new AtomicInteger();
        LocalTime soon = LocalTime.now(ZoneId.systemDefault()).plusSeconds(3);
        try (OpenBook book = open();
                OpenBook same = open();
                Backlog one = Backlog.start(
                        book, Map.of(KIND, (task, watch) -> {}), soon, all -> nights.incrementAndGet(), QUICK);
                Backlog other = Backlog.start(
                        same, Map.of(KIND, (task, watch) -> {}), soon, all -> nights.incrementAndGet(), QUICK)) {
            await(() -> nights.get() > 0);
            assertThat(one).isNotSameAs(other);
        }
        assertThat(nights).hasValue(1);
    }
}
