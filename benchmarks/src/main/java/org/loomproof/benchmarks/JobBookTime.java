package org.loomproof.benchmarks;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.CardId;
import org.loomproof.book.store.OpenBook;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;

/** The job book with ten thousand jobs, asked over HTTP as browsers do. The table gives the 99th percentile of each. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 5)
@Measurement(iterations = 3, time = 10)
@Fork(1)
public class JobBookTime {

    private static final int JOBS = 10_000;
    private static final int AT_ONCE = 20;
    private static final List<String> MAKES = List.of("Fennick", "Orrin", "Tarl", "Vessel");

    private @Nullable StaffedShop shop;
    private CardId job = CardId.fresh();

    /** Fills a book and signs everybody in. */
    @Setup
    public void fill() throws IOException, InterruptedException {
        shop = new StaffedShop(AT_ONCE);
        OpenBook book = shop.book();
        LocalDate first = LocalDate.of(2026, 1, 1);
        for (int i = 0; i < JOBS; i++) {
            job = book.cards()
                    .addCustomerWithJob(
                            Author.CONSOLE,
                            "job.called",
                            Map.of("name", "Customer " + i, "phone", "0155 " + i),
                            Map.of(
                                    "plate",
                                    "QX " + i,
                                    "make",
                                    MAKES.get(i % MAKES.size()),
                                    "model",
                                    "Model " + i % 50,
                                    "due",
                                    first.plusDays(i % 400).toString(),
                                    "stage",
                                    "check-in"))
                    .id();
        }
    }

    /** Ends the server and takes the book away. */
    @TearDown
    public void end() {
        requireNonNull(shop).close();
    }

    /** The list of jobs, what is due first on top. */
    @Benchmark
    public String list() throws IOException, InterruptedException {
        return asked("/");
    }

    /** A customer found among ten thousand. */
    @Benchmark
    public String find() throws IOException, InterruptedException {
        return asked("/?find=" + turn() % JOBS);
    }

    /** Twenty people at once, each looking now at the list and now at a job. */
    @Benchmark
    @Threads(AT_ONCE)
    public String twentyAtOnce() throws IOException, InterruptedException {
        return asked(turn() % 2 == 0 ? "/" : "/jobs/" + job);
    }

    private String asked(String path) throws IOException, InterruptedException {
        return requireNonNull(shop).asked(path);
    }

    private int turn() {
        return requireNonNull(shop).turn();
    }
}
