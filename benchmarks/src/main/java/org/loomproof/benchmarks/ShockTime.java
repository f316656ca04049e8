package org.loomproof.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.loomproof.workshop.meter.shock.Blow;
import org.loomproof.workshop.meter.shock.Knock;
import org.loomproof.workshop.meter.shock.Series;
import org.loomproof.workshop.meter.shock.ShockFinding;
import org.loomproof.workshop.meter.shock.Wanted;
import org.loomproof.workshop.quantity.Metres;
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

/** How a shock sensor's setting stands after a series of blows at three settings. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ShockTime {

    private static final Wanted WANTED = new Wanted(20, 2, 0.95);
    private static final double STEP = Math.sqrt(2);

    /** A usual series, and the longest that anyone would give a car. */
    @Param({"45", "300"})
    public int blows;

    private final List<Blow> given = new ArrayList<>();

    /** Gives the blows by the up-and-down method to a sensor whose threshold scatters. */
    @Setup
    public void knock() {
        SplittableRandom random = new SplittableRandom(1);
        double metres = 0.1;
        for (int k = 0; k < blows; k++) {
            boolean isNoticed = metres * (0.7 + 0.6 * random.nextDouble()) > 0.1;
            given.add(new Blow(1 + 3 * k / blows, new Knock(0.2, new Metres(metres)), isNoticed));
            metres = isNoticed ? metres / STEP : metres * STEP;
        }
    }

    /** The settings judged, and the next blow. No aim was set. */
    @Benchmark
    public ShockFinding finding() {
        Knock street = new Knock(0.2, new Metres(0.01));
        return ShockFinding.of(new Series(given, street, new Knock(0.2, new Metres(0.25))), WANTED);
    }
}
