package org.loomproof.benchmarks;

import static java.util.Objects.requireNonNull;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.planner.Planner;
import org.loomproof.workshop.prover.FaultProof;
import org.loomproof.workshop.prover.FaultProver;
import org.loomproof.workshop.prover.FaultWatch;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.prover.claim.Claim;
import org.loomproof.workshop.prover.claim.Claimed;
import org.loomproof.workshop.prover.claim.Fitting;
import org.loomproof.workshop.prover.explore.Explorer;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.product.Reachable;
import org.loomproof.workshop.prover.product.Sightings;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.wiring.Corner;
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
 * The bakery's van, the largest example, as planned: its proof, its faults and slips, and the search through all that vehicle and
 * controller come to together. What these take of memory is told by {@code -prof gc}.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2)
@Measurement(iterations = 5)
@Fork(1)
public class ProofTime {

    private @Nullable Brief brief;
    private @Nullable Plan plan;
    private @Nullable Fitting fitting;
    private @Nullable Sightings sightings;

    /** Reads and plans the example once, and walks it for the search. */
    @Setup
    public void plan() {
        Brief read = BakeryVan.brief();
        Plan first = Planner.plan(read).plans().getFirst();
        Brief set = read.set(first.settings());
        Fitting fitted =
                new Fitting(set, first, Vehicle.stock(set, Corner.TYPICAL), Vehicle.fitted(set, first, Corner.TYPICAL));
        Sightings overheard = new Sightings(set.kit());
        Explorer.ofWholeRanges(set, first, fitted.stock(), fitted.fitted(), overheard)
                .decide(Claim.all().stream()
                        .flatMap(claim -> claim.in(fitted).stream())
                        .flatMap(claimed -> claimed instanceof Claimed.ToShow(var toShow, var onPurpose)
                                ? Stream.of(toShow)
                                : Stream.empty())
                        .toList());
        brief = read;
        plan = first;
        fitting = fitted;
        sightings = overheard;
    }

    /** Every claim in all that can be reached. Aim: 2 s. */
    @Benchmark
    public Proof prove() {
        return Prover.prove(requireNonNull(brief), requireNonNull(plan));
    }

    /** Every single fault and slip, and the test order. Aim: 30 s. */
    @Benchmark
    public FaultProof faults() {
        return FaultProver.prove(requireNonNull(brief), requireNonNull(plan), FaultWatch.PATIENT);
    }

    /** The search alone, what the controller is given once known. */
    @Benchmark
    public Optional<Reachable> reach() {
        return Reachable.of(requireNonNull(fitting), requireNonNull(sightings));
    }
}
