package org.loomproof.pages.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.book.Book;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.key.Passphrase;
import org.loomproof.book.key.Stretching;
import org.loomproof.book.place.BookPlace;
import org.loomproof.book.store.OpenBook;

/** What jobs share: sheets taken and given back, parts on the shelf, and which runs' papers a job keeps. */
class SharedTest {

    private static final String RUN = "abcdefghijklmnopqrstuvwxyz";
    private static final String NEXT = "bcdefghijklmnopqrstuvwxyza";

    @TempDir
    private Path folder;

    private OpenBook book;

    @BeforeEach
    void open() {
        book = Book.create(
                        new BookPlace.InFile(folder.resolve("jobs.book")),
                        Passphrase.of("four brass kettles sing"),
                        new Stretching(64, 1, 1),
                        Clock.systemUTC())
                .orThrow();
    }

    @AfterEach
    void close() {
        book.close();
    }

    private Card job(Map<String, String> entries) {
        return book.cards().addCustomerWithJob(Author.CONSOLE, "job.called", Map.of("name", "Somebody"), entries);
    }

    private Card changed(Card card, Map<String, String> entries) {
        book.cards().change(card.id(), card.version(), Author.CONSOLE, "job.sheet", entries);
        return book.cards().find(card.id()).orElseThrow();
    }

    @Test
    void aSheetIsGivenBackUnlessSomebodyChangedItMeanwhile() {
        Shared shared = new Shared(book);
        Card sheet =
                book.cards().add(CardKind.SHEET, Author.CONSOLE, "sheet.changed", Map.of("title", "A", "sheet", "one"));
        Card first = changed(changed(job(Map.of("plate", "1")), Shared.taken(sheet)), Map.of("sheet", "two"));
        Card second = changed(changed(job(Map.of("plate", "2")), Shared.taken(sheet)), Map.of("sheet", "three"));

        assertThat(shared.give(first, "sheet", "", false, Author.CONSOLE))
                .hasValueSatisfying(changes -> assertThat(changes).containsEntry("sheet-from-version", "2"));
        assertThat(shared.give(second, "sheet", "", false, Author.CONSOLE)).isEmpty();
        assertThat(shared.all(CardKind.SHEET))
                .extracting(card -> card.get("sheet"))
                .containsExactly("two");

        assertThat(shared.give(second, "sheet", "B", true, Author.CONSOLE)).isPresent();
        assertThat(shared.all(CardKind.SHEET))
                .extracting(card -> card.get("sheet"))
                .containsExactly("two", "three");
    }

    @Test
    void whatAJobTakesIsOrderedAndLeavesTheShelf() {
        book.cards()
                .add(
                        CardKind.PRICES,
                        Author.CONSOLE,
                        "prices.changed",
                        Map.of("title", "prices", "stock", "article;size;count\nFuse;7.5 A;3\ntape;;1\n"));
        Card job = job(
                Map.of("stage", "bench", "verdict", "proven", "needs", "article,size,count\nfuse,7.5A,2\ntape,,4\n"));
        job(Map.of("stage", "bench", "verdict", "proven", "needs", "article,size,count\nfuse,7.5 A,2\n"));
        Shelf shelf = new Shelf(book);
        assertThat(shelf.rows())
                .extracting(row -> row.counted(row.needed()) + " of "
                        + row.counted(row.there().orElseThrow()) + ", order "
                        + row.counted(row.toOrder().orElseThrow()))
                .containsExactly("4 of 3, order 1", "4 of 1, order 3");

        shelf.take(job, Author.CONSOLE);
        changed(job, Map.of(JobStep.BENCH.entry(), "2026-11-27"));
        assertThat(shelf.rows())
                .extracting(row -> row.there().orElseThrow())
                .containsExactly(BigDecimal.ONE, BigDecimal.ZERO);
        assertThat(shelf.rows().getFirst().needed()).isEqualTo(BigDecimal.TWO);
    }

    @Test
    void papersOfRunsThatAJobNamesStayAndOthersAreNobodys() {
        Card planned = job(Map.of(Runs.LATEST, RUN + ".tried"));
        Card built = changed(planned, Runs.built(planned));
        Card again = changed(built, Runs.overtaken(built));
        assertThat(Runs.comparedWith(again)).contains(RUN + ".tried");
        Card next = changed(again, Map.of(Runs.LATEST, NEXT));
        assertThat(Runs.nobodys(next))
                .rejects(RUN + ".tried/plan.yaml", NEXT + "/plan.yaml", "photo")
                .accepts(RUN + "/plan.yaml", NEXT + ".tried/plan.yaml");
        assertThat(Runs.comparedWith(changed(next, Map.of(Runs.LATEST, RUN))))
                .as("the same plan, with or without its faults tried")
                .isEmpty();
    }
}
