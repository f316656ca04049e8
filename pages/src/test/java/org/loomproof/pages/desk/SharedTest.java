package org.loomproof.pages.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
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
import org.loomproof.shop.job.MadeJob;
import org.loomproof.shop.job.TextRun;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.words.Messages;

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

    /** What the shop keeps in the book comes into a job's papers: prices, its own timings with their spread, and the shelf. */
    @Test
    void papersTakeTimingsAndStockFromTheBook() {
        book.cards()
                .add(
                        CardKind.PRICES,
                        Author.CONSOLE,
                        "prices.changed",
                        Map.of(
                                "title",
                                "prices",
                                "prices",
                                "article,size,price\ncurrency,,EUR\nhour,,60.00\ntax,,20\nvalid,,30\nrelay,,5.00\n",
                                "stock",
                                "article,size,count\ndiode,1N4004,1\n",
                                "history",
                                "work,minutes\nfinal-test,20\nfinal-test,30\nfinal-test,25\nfinal-test,45\nfinal-test,40\n"));
        Path van = Path.of("..", "examples", "bakery-van");
        MadeJob made = switch (new TextRun(Messages.english())
                .make(
                        text(van, "sheet"),
                        text(van, "kit"),
                        text(van, "order"),
                        Prices.texts(book),
                        stage -> {},
                        () -> {})) {
            case Checked.Good<MadeJob>(MadeJob good) -> good;
            case Checked.Bad<MadeJob>(var problems) -> throw new AssertionError(problems.toString());
        };
        assertThat(paper(made, "quote.txt").replaceAll("[\\s\u00A0]+", " "))
                .as("the middle of five timings, and their quartiles")
                .contains("(30 min each; half of our 5 such jobs took 25 to 40)");
        assertThat(paper(made, "pick-list.csv").lines().filter(line -> line.startsWith("diode,")))
                .isNotEmpty()
                .allMatch(line -> line.endsWith(",1," + (count(line) - 1)));
    }

    private static String paper(MadeJob made, String name) {
        return made.papers().stream()
                .filter(paper -> paper.name().equals(name))
                .findFirst()
                .orElseThrow()
                .text();
    }

    private static int count(String line) {
        return Integer.parseInt(line.split(",", -1)[2]);
    }

    private static SourceText text(Path folder, String name) {
        try {
            return new SourceText(name + ".yaml", Files.readString(folder.resolve(name + ".yaml")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
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
