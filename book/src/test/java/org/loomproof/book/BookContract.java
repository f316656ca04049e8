package org.loomproof.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardEvent;
import org.loomproof.book.card.CardId;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.card.CardLine;
import org.loomproof.book.card.Listing;
import org.loomproof.book.card.Saved;

/** What a book does wherever it lies. Each kind of place has a class that runs all of this against it. */
abstract class BookContract extends KeepingContract {

    @Test
    void whatWasWrittenIsThereAfterTheBookWasClosed() {
        Card van = addVan();
        CardId photo = book().attachments()
                .add(van.id(), BO, "photo of the dash", new byte[] {1, 2, 3})
                .orElseThrow();
        reopen();

        assertThat(book().cards().find(van.id())).hasValue(van);
        assertThat(book().cards().find(van.customer()).orElseThrow().get("name"))
                .isEqualTo("Wilhelmine Östergård");
        assertThat(book().attachments().open(van.id(), photo)).hasValue(new byte[] {1, 2, 3});
        assertThat(book().attachments().of(van.id())).singleElement().satisfies(label -> {
            assertThat(label.label()).isEqualTo("photo of the dash");
            assertThat(label.who()).isEqualTo(BO);
        });
        assertThat(book().attachments().open(van.customer(), photo))
                .as("asked of another card")
                .isEmpty();
    }

    @Test
    void everyChangeStaysWithWhoAndWhenAndAnyEarlierStateReadsBack() {
        Card first = addVan();
        Card second = saved(
                book().cards().change(first.id(), 1, BO, "job.checked-in", Map.of("stage", "in", "lamps", "none")));
        Card third = saved(
                book().cards().change(first.id(), 2, ADA, "job.corrected", Map.of("plate", "QX 481 LN", "lamps", "")));

        assertThat(book().cards().at(first.id(), 1)).hasValue(first);
        assertThat(book().cards().at(first.id(), 2)).hasValue(second);
        assertThat(book().cards().find(first.id())).hasValue(third);
        assertThat(third.entries().find("lamps")).isEmpty();

        List<CardEvent> events = book().cards().events(first.id());
        assertThat(events).extracting(CardEvent::version).containsExactly(1, 2, 3);
        assertThat(events).extracting(CardEvent::who).containsExactly(ADA, BO, ADA);
        assertThat(events).extracting(CardEvent::what).containsExactly("job.called", "job.checked-in", "job.corrected");
        assertThat(events.get(2).changes()).containsOnlyKeys("plate", "lamps");
        assertThat(events).extracting(CardEvent::at).isSorted();
    }

    @Test
    void theSecondOfTwoWhoSaveIsToldAndOverwritesNothing() {
        Card seen = addVan();
        saved(book().cards().change(seen.id(), seen.version(), ADA, "job.corrected", Map.of("due", "2026-12-01")));
        Saved second =
                book().cards().change(seen.id(), seen.version(), BO, "job.corrected", Map.of("due", "2026-12-24"));

        assertThat(second)
                .isInstanceOfSatisfying(
                        Saved.Overtaken.class,
                        overtaken -> assertThat(overtaken.now().get("due")).isEqualTo("2026-12-01"));
        assertThat(book().cards().find(seen.id()).orElseThrow().get("due")).isEqualTo("2026-12-01");
        assertThat(book().cards().events(seen.id())).hasSize(2);
    }

    @Test
    void ofManyWhoSaveAtOnceExactlyOneGetsEachVersion() throws Exception {
        Card seen = addVan();
        int writers = 8;
        int each = 12;
        try (ExecutorService pool = Executors.newFixedThreadPool(writers)) {
            List<Callable<Integer>> work = IntStream.range(0, writers)
                    .<Callable<Integer>>mapToObj(writer -> () -> {
                        int done = 0;
                        while (done < each) {
                            Card now = book().cards().find(seen.id()).orElseThrow();
                            Map<String, String> mark = Map.of("mark-" + writer, "" + done);
                            if (book().cards().change(now.id(), now.version(), BO, "job.corrected", mark)
                                    instanceof Saved.Done) {
                                done++;
                            }
                        }
                        return done;
                    })
                    .toList();
            for (Future<Integer> result : pool.invokeAll(work)) {
                assertThat(result.get()).isEqualTo(each);
            }
        }
        Card last = book().cards().find(seen.id()).orElseThrow();
        assertThat(last.version()).isEqualTo(1 + writers * each);
        IntStream.range(0, writers)
                .forEach(w -> assertThat(last.get("mark-" + w)).isEqualTo("" + (each - 1)));
    }

    @Test
    void jobsAreFoundByCustomerPlateNumberVehicleAndDay() {
        Card van = addVan();
        book().cards()
                .addCustomerWithJob(
                        BO,
                        "job.called",
                        Map.of("name", "Tobias Quill"),
                        Map.of("plate", "ZZ 9", "make", "Marrow", "model", "Gull", "stage", "bay"));

        for (String words : List.of(
                "ostergard",
                "WILHELMINE",
                "qx481lm",
                "QX 481",
                "81lm",
                "courier",
                "marrow courier",
                "11111111111111111",
                "2026-11-30",
                "1234")) {
            assertThat(found(Listing.all(CardKind.JOB, 10).foundBy(words)))
                    .as(words)
                    .containsExactly(van.id());
        }
        for (String words : List.of("wilhelm", "quince", "spare", "quill courier", "2026-11-29", "%", "' OR 1=1 --")) {
            assertThat(found(Listing.all(CardKind.JOB, 10).foundBy(words)))
                    .as(words)
                    .doesNotContain(van.id());
        }
        assertThat(found(Listing.all(CardKind.JOB, 10).foundBy("marrow"))).hasSize(2);
        assertThat(found(Listing.all(CardKind.JOB, 10).at("called"))).containsExactly(van.id());
        assertThat(book().cards().count(Listing.all(CardKind.JOB, 1))).isEqualTo(2);
        assertThat(found(Listing.all(CardKind.CUSTOMER, 10).foundBy("östergård")))
                .containsExactly(van.customer());

        saved(book().cards().change(van.id(), 1, BO, "job.corrected", Map.of("plate", "NEW 77")));
        assertThat(found(Listing.all(CardKind.JOB, 10).foundBy("qx481lm"))).isEmpty();
        assertThat(found(Listing.all(CardKind.JOB, 10).foundBy("new77"))).containsExactly(van.id());
    }

    @Test
    void aListShowsWhatIsDueFirstAndGoesOnWhereItEnded() {
        List<CardId> inOrder = new ArrayList<>();
        for (String due : List.of("2026-12-03", "2026-12-01", "", "2026-12-02")) {
            inOrder.add(book().cards()
                    .addCustomerWithJob(ADA, "job.called", Map.of("name", "N"), Map.of("due", due, "plate", "P" + due))
                    .id());
        }
        Listing two = Listing.all(CardKind.JOB, 2);
        assertThat(found(two)).containsExactly(inOrder.get(1), inOrder.get(3));
        assertThat(found(two.after(2))).containsExactly(inOrder.get(0), inOrder.get(2));
        List<CardLine> lines = book().cards().list(two);
        assertThat(lines.getFirst().headline().get("plate")).isEqualTo("P2026-12-01");
        assertThat(lines.getFirst().customerHeadline().get("name")).isEqualTo("N");
    }

    @Test
    void ofManyWhoAskForTheWorkOfAJobAllGetTheSameCardAndLoseNothing() throws Exception {
        Card van = addVan();
        int writers = 6;
        int each = 8;
        try (ExecutorService pool = Executors.newFixedThreadPool(writers)) {
            List<Callable<CardId>> work = IntStream.range(0, writers)
                    .<Callable<CardId>>mapToObj(writer -> () -> {
                        Card card = book().cards()
                                .beside(van.id(), CardKind.WORK, BO, "work.begun")
                                .orElseThrow();
                        for (int i = 0; i < each; i++) {
                            Map<String, String> one = Map.of(writer + "-" + i, "done");
                            assertThat(book().cards().amend(card, BO, "work.noted", now -> one))
                                    .isInstanceOf(Saved.Done.class);
                        }
                        return card.id();
                    })
                    .toList();
            Set<CardId> cards = new HashSet<>();
            for (Future<CardId> result : pool.invokeAll(work)) {
                cards.add(result.get());
            }
            assertThat(cards).containsExactly(CardId.beside(van.id(), CardKind.WORK));
        }
        Card all = book().cards()
                .beside(van.id(), CardKind.WORK, ADA, "work.begun")
                .orElseThrow();
        assertThat(all.entries().values()).hasSize(writers * each);
        assertThat(all.customer()).isEqualTo(van.customer());
        assertThat(book().cards().beside(CardId.fresh(), CardKind.WORK, ADA, "work.begun"))
                .as("of no job")
                .isEmpty();
        assertThat(found(Listing.all(CardKind.JOB, 10))).as("is no job").containsExactly(van.id());
    }
}
