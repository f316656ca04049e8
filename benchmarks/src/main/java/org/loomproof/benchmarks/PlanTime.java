package org.loomproof.benchmarks;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.planner.Planner;
import org.loomproof.workshop.planner.search.Candidates;
import org.loomproof.workshop.weigh.PlannedJob;
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

/**
 * The bakery's van, the largest example, planned, and planned and proven; its kit of 20 leads as it is, and with further leads
 * of the same roles and ports. One plan is long enough to be timed by itself.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3)
@Measurement(iterations = 7)
@Fork(1)
public class PlanTime {

    /** Leads of the kit. */
    @Param({"20", "40", "80"})
    public int leads;

    private @Nullable Brief brief;

    /** Reads the example once. */
    @Setup
    public void read() {
        Brief given = BakeryVan.brief();
        brief = new Brief(given.sheet(), grown(given.kit()), given.order());
    }

    private Kit grown(Kit kit) {
        List<Lead> all = new ArrayList<>(kit.leads());
        for (int i = 0; all.size() < leads; i++) {
            Lead like = kit.leads().get(i % kit.leads().size());
            all.add(new Lead(
                    new LeadId("more-" + i),
                    "more",
                    Integer.toString(i),
                    like.colour(),
                    like.size(),
                    like.role(),
                    like.port(),
                    like.alwaysUsed(),
                    like.note(),
                    like.basis()));
        }
        return new Kit(
                kit.name(),
                kit.leastSupply(),
                kit.mostSupply(),
                kit.survives(),
                kit.standby(),
                all,
                kit.options(),
                kit.extras(),
                kit.behaviour());
    }

    /** Candidates alone. Aim: under 1 s. */
    @Benchmark
    public Candidates plan() {
        return Planner.plan(requireNonNull(brief));
    }

    /** Candidates, proofs and the choice. */
    @Benchmark
    public PlannedJob planAndProve() {
        return new Weigher().weigh(requireNonNull(brief));
    }
}
