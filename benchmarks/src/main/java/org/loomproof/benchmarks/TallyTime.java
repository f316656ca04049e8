package org.loomproof.benchmarks;

import static java.util.Objects.requireNonNull;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardId;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.store.OpenBook;
import org.loomproof.pages.desk.Confirmations;
import org.loomproof.workshop.words.Messages;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** A vehicle sheet whose every entry was confirmed in so many cars, and one more car counted. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 5)
@Measurement(iterations = 3, time = 10)
@Fork(1)
public class TallyTime {

    private static final String COUNTED = "tally.counted";

    /** Cars that were fitted by this one sheet. */
    @Param({"10", "1000", "10000"})
    private int cars;

    private @Nullable StaffedShop shop;
    private CardId sheet = CardId.fresh();
    private String said = "";

    /** Counts them all. */
    @Setup
    public void count() throws IOException, InterruptedException {
        shop = new StaffedShop(1);
        OpenBook book = shop.book();
        String text = Files.readString(
                new File(System.getProperty("loomproof.home", ".")).toPath().resolve("examples/bakery-van/sheet.yaml"));
        Card card = book.cards()
                .add(CardKind.SHEET, Author.CONSOLE, "sheet.changed", Map.of("title", "Van", "sheet", text));
        sheet = card.id();
        said = new Confirmations(book, Messages.english())
                .entries(card).values().stream().map(sum -> sum + "+").collect(Collectors.joining(" "));
        Map<String, String> all = new HashMap<>();
        Stream.generate(CardId::fresh).limit(cars).forEach(job -> all.put(job.value(), said));
        book.cards().amend(tally(), Author.CONSOLE, COUNTED, now -> all);
    }

    private Card tally() {
        return requireNonNull(shop)
                .book()
                .cards()
                .beside(sheet, CardKind.TALLY, Author.CONSOLE, "tally.begun")
                .orElseThrow();
    }

    /** Ends the server and takes the book away. */
    @TearDown
    public void end() {
        requireNonNull(shop).close();
    }

    /** The page of the sheet, asked over HTTP. */
    @Benchmark
    public String page() throws IOException, InterruptedException {
        return requireNonNull(shop).asked("/sheets/" + sheet);
    }

    /** One more car. */
    @Benchmark
    public Object oneMore() {
        String job = CardId.fresh().value();
        return requireNonNull(shop).book().cards().amend(tally(), Author.CONSOLE, COUNTED, now -> Map.of(job, said));
    }
}
