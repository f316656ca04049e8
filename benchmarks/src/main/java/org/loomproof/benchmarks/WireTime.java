package org.loomproof.benchmarks;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.loomproof.workshop.meter.advice.Foresight;
import org.loomproof.workshop.meter.advice.MeterTest;
import org.loomproof.workshop.meter.evidence.Belief;
import org.loomproof.workshop.meter.evidence.Fleet;
import org.loomproof.workshop.meter.evidence.Priors;
import org.loomproof.workshop.meter.reading.Measured;
import org.loomproof.workshop.meter.reading.MeterFacts;
import org.loomproof.workshop.meter.reading.Reading;
import org.loomproof.workshop.meter.reading.Shown;
import org.loomproof.workshop.meter.role.WireModels;
import org.loomproof.workshop.problem.Place;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A wire with twenty readings, one of each test, held against every usual way of building a wire: its probabilities, and the next
 * test. What the drawn cars show is solved once a run and is measured apart, as what the first wire costs.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class WireTime {

    private final SplittableRandom random = new SplittableRandom(1);
    private final Fleet fleet = new Fleet(WireModels.usual());
    private final Foresight foresight = new Foresight(fleet);
    private @Nullable Belief belief;

    /** Solves what the drawn cars show, and what the tests may. */
    @Setup
    public void solve() {
        belief = Priors.withoutSheet(fleet).afterReadings(readings().subList(0, 1));
        foresight.next(requireNonNull(belief), List.of());
    }

    /** One reading of each test; no two runs read the same, so that nothing is remembered. */
    private List<Reading> readings() {
        List<Reading> readings = new ArrayList<>();
        for (MeterTest test : MeterTest.ALL) {
            boolean isOhms = test.kind() == MeterTest.Kind.OHMS;
            readings.add(new Reading(
                    Place.nowhere("w"),
                    "w",
                    test.step(),
                    isOhms ? Measured.OHMS : Measured.VOLTS,
                    new Shown.Steady(12 * random.nextDouble(), 0.01),
                    OptionalDouble.of(12.5),
                    MeterFacts.USUAL,
                    "",
                    "",
                    ""));
        }
        return readings;
    }

    /** The probabilities of one wire with twenty readings. Aim: under 50 ms. */
    @Benchmark
    public Belief identify() {
        return Priors.withoutSheet(fleet).afterReadings(readings());
    }

    /** The next test of a wire that has been read once. Aim: under 200 ms. */
    @Benchmark
    public Optional<Foresight.Choice> next() {
        return foresight.next(requireNonNull(belief), List.of());
    }

    /** The first wire of all, with everything that has to be solved for it and for its next test. No aim was set. */
    @Benchmark
    @BenchmarkMode(Mode.SingleShotTime)
    @Warmup(iterations = 1)
    @Measurement(iterations = 5)
    public Optional<Foresight.Choice> first() {
        Fleet fresh = new Fleet(WireModels.usual());
        return new Foresight(fresh).next(Priors.withoutSheet(fresh).afterReadings(readings()), List.of());
    }
}
