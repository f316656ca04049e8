package org.loomproof.benchmarks;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.meter.drain.DrainFinding;
import org.loomproof.workshop.meter.drain.DrainLog;
import org.loomproof.workshop.meter.drain.Sample;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.weigh.Weigher;
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
import org.openjdk.jmh.annotations.Warmup;

/** What a log of the bakery's van after locking says: two modules fall asleep, then something wakes every quarter of an hour. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class DrainTime {

    private static final double EVERY_MINUTES = 0.25;

    /** Two hours and a night, a sample in fifteen seconds. */
    @Param({"480", "2880"})
    public int samples;

    private @Nullable Brief brief;
    private @Nullable Plan plan;
    private @Nullable DrainLog log;

    /** Plans once, and writes the log. */
    @Setup
    public void park() {
        brief = BakeryVan.brief();
        plan = new Weigher().weigh(brief).plan();
        SplittableRandom random = new SplittableRandom(1);
        List<Sample> written = new ArrayList<>();
        for (int k = 0; k < samples; k++) {
            double minutes = EVERY_MINUTES * (k + 1);
            double amps = 0.04 + (minutes < 4 ? 3 : 0) + (minutes < 25 ? 0.7 : minutes % 15 < 2 ? 1.4 : 0);
            written.add(new Sample(minutes, amps * (0.99 + 0.02 * random.nextDouble()), 0.003));
        }
        log = new DrainLog(written, List.of());
    }

    /** Levels, what may be behind them, and the days to no-start. No aim was set. */
    @Benchmark
    public DrainFinding finding() {
        return DrainFinding.of(requireNonNull(brief), requireNonNull(plan), requireNonNull(log));
    }
}
