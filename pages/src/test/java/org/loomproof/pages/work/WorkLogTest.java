package org.loomproof.pages.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.book.Book;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardId;
import org.loomproof.book.key.Passphrase;
import org.loomproof.book.key.Stretching;
import org.loomproof.book.place.BookPlace;
import org.loomproof.book.store.OpenBook;

class WorkLogTest {

    private static final Author BO = Author.of(CardId.fresh());
    private static final Passphrase PASSPHRASE = Passphrase.of("four brass kettles sing");
    private static final Instant MORNING = Instant.parse("2026-11-26T09:00:00Z");

    /** One of each kind; the compiler asks for a new kind below. */
    private static final List<Work> EACH = List.of(
            new Work.Tick("bench/P1-3", "sum", true),
            new Work.ReadingTaken("ignition", "whole", "key on", "key=on", "12,4", "V", "12.6"),
            new Work.JointMade("bay/ignition", "J3", "crimp sleeve", "0.75 mm²", 4),
            new Work.CutEvidence("starter", "meter", "0 V, 10.1 V while cranking"),
            new Work.CutMade("starter"),
            new Work.EndProven("starter", "before-cut", "10.1 V while cranking"),
            new Work.TestResult("armed-start", "run", Work.TestResult.Result.WAIVED, "", "Ada Quill", "no key"),
            new Work.PartUsed("fuse", "7.5 A", 2, "lot 7"),
            new Work.SheetChecked("horn", "0a1b", Work.SheetChecked.Says.CONFIRMED),
            new Work.MinutesSpent("bench", 35),
            new Work.Deviation("bay/horn", "P1-4 capped", "joined", "asked for by the customer"),
            new Work.Complaint("no-start,flat-battery", true),
            new Work.ComebackReading("K1 87a", "disarmed + key start", "0.2", "12.1"),
            new Work.CauseFound("wire-open W3", "joint made anew"),
            new Work.Undone("0b6c0a52-0000-4000-8000-000000000001"));

    @TempDir
    private Path folder;

    private CardId job = CardId.fresh();
    private Optional<OpenBook> open = Optional.empty();

    private OpenBook book() {
        return open.orElseThrow();
    }

    @BeforeEach
    void aJob() {
        open = Optional.of(Book.create(
                        new BookPlace.InFile(folder.resolve("jobs.book")),
                        PASSPHRASE,
                        new Stretching(64, 1, 1),
                        Clock.systemUTC())
                .orThrow());
        Card card = book().cards().addCustomerWithJob(BO, "job.called", Map.of("name", "N"), Map.of("plate", "P"));
        job = card.id();
    }

    @AfterEach
    void closed() {
        open.ifPresent(OpenBook::close);
    }

    @Test
    void everyKindOfEntryReadsBackAsItWasWritten() {
        List<Entry> entries = EACH.stream().map(work -> Entry.of(MORNING, work)).toList();
        for (Entry entry : entries) {
            assertThat(EntryText.read(EntryText.of(entry))).hasValue(entry);
        }
        WorkLog log = new WorkLog(book(), job);
        assertThat(entries.stream()
                        .allMatch(entry -> log.add(BO, List.of(entry)).isPresent()))
                .isTrue();
        assertThat(log.all()).extracting(Noted::entry).containsExactlyElementsOf(entries);
        assertThat(log.all()).allSatisfy(noted -> assertThat(noted.who()).isEqualTo(BO));
        assertThat(EACH)
                .extracting(Work::getClass)
                .as("one of each kind")
                .hasSize(Work.class.getPermittedSubclasses().length)
                .doesNotHaveDuplicates();
    }

    @Test
    void whatIsSentTwiceIsWrittenOnceAndTheFirstStays() {
        WorkLog log = new WorkLog(book(), job);
        Entry first = Entry.of(MORNING, new Work.MinutesSpent("bench", 5));
        Entry same = new Entry(first.id(), MORNING.plusSeconds(9), new Work.MinutesSpent("bench", 50));
        Entry second = Entry.of(MORNING.plusSeconds(1), new Work.MinutesSpent("bay/horn", 2));
        log.add(BO, List.of(first));
        assertThat(log.add(BO, List.of(first, second)))
                .as("what is written now")
                .hasValue(List.of(second));
        assertThat(log.add(BO, List.of(same, second))).hasValue(List.of());
        assertThat(log.all()).extracting(Noted::entry).containsExactly(first, second);
    }

    @Test
    void whatIsTakenBackCountsNoMoreAndStaysToBeRead() {
        WorkLog log = new WorkLog(book(), job);
        Entry reading = Entry.of(MORNING, new Work.ReadingTaken("horn", "whole", "key off", "", "1.2", "V", ""));
        Entry other = Entry.of(MORNING, new Work.ReadingTaken("horn", "whole", "key off", "", "12", "V", ""));
        log.add(BO, List.of(reading));
        log.add(BO, List.of(Entry.of(MORNING, new Work.Undone(reading.id())), other));
        assertThat(log.standing()).extracting(Noted::entry).containsExactly(other);
        assertThat(log.all()).hasSize(3);
    }

    @Test
    void ofManyDevicesNoneOvertakesAnother() throws Exception {
        int devices = 5;
        int each = 10;
        try (ExecutorService pool = Executors.newFixedThreadPool(devices)) {
            List<Callable<List<Entry>>> work = IntStream.range(0, devices)
                    .<Callable<List<Entry>>>mapToObj(device -> () -> {
                        List<Entry> sent = new ArrayList<>();
                        for (int i = 0; i < each; i++) {
                            Entry entry = Entry.of(MORNING, new Work.Tick("bench/" + device + "-" + i, "sum", true));
                            sent.add(entry);
                            new WorkLog(book(), job).add(BO, List.of(entry));
                        }
                        return sent;
                    })
                    .toList();
            List<Entry> all = new ArrayList<>();
            for (Future<List<Entry>> sent : pool.invokeAll(work)) {
                all.addAll(sent.get());
            }
            assertThat(new WorkLog(book(), job).all())
                    .extracting(Noted::entry)
                    .containsExactlyInAnyOrderElementsOf(all);
        }
    }

    @Test
    void withItsCustomerALogIsGone() {
        WorkLog log = new WorkLog(book(), job);
        Entry entry = Entry.of(MORNING, new Work.Tick("bench/P1-1", "sum", true));
        log.add(BO, List.of(entry));
        book().customers().erase(book().cards().find(job).orElseThrow().customer(), BO);
        assertThat(log.all()).isEmpty();
        assertThat(log.add(BO, List.of(entry))).isEmpty();
    }

    @Test
    void whatIsNoEntryIsRefused() {
        String good = EntryText.of(Entry.of(MORNING, new Work.Tick("bench/P1-1", "sum", true)));
        assertThat(EntryText.read(good)).isPresent();
        for (String bad : List.of(
                "",
                "null",
                "[]",
                "{",
                good.replace("tick", "tock"),
                good.replace("\"done\":true", "\"done\":null"),
                good.replace("\"done\":true", "\"door\":true"),
                good.replace("bench/P1-1", " "),
                good.replace("bench/P1-1", "x".repeat(Work.LONGEST + 1)),
                good.replaceFirst("\"id\":\"[^\"]+\"", "\"id\":\"../other\""),
                good.replaceFirst("\"when\":\\d+", "\"when\":\"now\""),
                good.replaceFirst("\"when\":\\d+", "\"when\":999999999999999999999"))) {
            assertThat(EntryText.read(bad)).as(bad).isEmpty();
        }
        assertThatThrownBy(() -> new Work.TestResult("t", "run", Work.TestResult.Result.WAIVED, "", "", "no key"))
                .as("left out by nobody")
                .isInstanceOf(IllegalArgumentException.class);
    }
}
