package org.loomproof.benchmarks;

import static java.util.Objects.requireNonNull;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.CardId;
import org.loomproof.papers.Papers;
import org.loomproof.papers.folder.Paper;
import org.loomproof.shop.job.TextRun;
import org.loomproof.workshop.brief.read.ReadBrief;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.file.PlanFile;
import org.loomproof.workshop.plan.file.PlanFileWriter;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.weigh.Weigher;
import org.loomproof.workshop.words.Messages;
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

/**
 * The bakery's van on the screen, each answer a page with drawing and tables, over HTTP as a browser asks for it; the controls stand
 * otherwise each time. The table gives median and 99th percentile.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 10)
@Measurement(iterations = 3, time = 10)
@Fork(1)
public class TryTime {

    private static final int AT_ONCE = 20;
    private static final String RUN = "measured";
    private static final String[] KEYS = {"off", "accessory", "on", "start"};
    private static final String[] STATES = {"disarmed", "arming", "armed", "warning", "sounding", "override"};
    private static final String[] SUPPLIES = {"cranking", "low", "rest", "charging", "high"};

    private @Nullable StaffedShop shop;
    private CardId job = CardId.fresh();

    /** Plans the van and puts it into a book. */
    @Setup
    public void plan() throws IOException, InterruptedException {
        shop = new StaffedShop(AT_ONCE);
        Messages english = Messages.english();
        Path van = new File(System.getProperty("loomproof.home", ".")).toPath().resolve("examples/bakery-van");
        ReadBrief read = ((Checked.Good<ReadBrief>) new TextRun(english)
                        .briefs()
                        .read(van.resolve("sheet.yaml"), van.resolve("kit.yaml"), van.resolve("order.yaml")))
                .value();
        Plan plan = new Weigher().weigh(read.brief()).plan();
        String file = new PlanFileWriter(english).write(new PlanFile(read, plan));
        job = shop.book()
                .cards()
                .addCustomerWithJob(Author.CONSOLE, "job.called", Map.of("name", "Somebody"), Map.of("run", RUN))
                .id();
        shop.book()
                .attachments()
                .add(job, Author.CONSOLE, RUN + "/" + Papers.PLAN, new Paper(Papers.PLAN, file).bytes());
    }

    /** One person alone. */
    @Benchmark
    public String alone() throws IOException, InterruptedException {
        return answer();
    }

    /** Twenty people at one car at once. */
    @Benchmark
    @Threads(AT_ONCE)
    public String twentyAtOnce() throws IOException, InterruptedException {
        return answer();
    }

    private String answer() throws IOException, InterruptedException {
        StaffedShop there = requireNonNull(shop);
        int turn = there.turn();
        return there.asked("/jobs/%s/try?at-key=%s&state=%s&supply=%s"
                .formatted(
                        job, KEYS[turn % KEYS.length], STATES[turn % STATES.length], SUPPLIES[turn % SUPPLIES.length]));
    }

    /** Ends the server and takes the book away. */
    @TearDown
    public void end() {
        requireNonNull(shop).close();
    }
}
