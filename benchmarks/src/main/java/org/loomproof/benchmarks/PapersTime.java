package org.loomproof.benchmarks;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.loomproof.papers.Material;
import org.loomproof.papers.Papers;
import org.loomproof.papers.ShopFacts;
import org.loomproof.papers.bay.ShopAddress;
import org.loomproof.papers.folder.Paper;
import org.loomproof.papers.pdf.Sheet;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.goods.price.History;
import org.loomproof.workshop.prover.FaultProof;
import org.loomproof.workshop.prover.FaultProver;
import org.loomproof.workshop.prover.FaultWatch;
import org.loomproof.workshop.weigh.PlannedJob;
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
import org.openjdk.jmh.annotations.Warmup;

/** All papers of the bakery's van, the largest example, once it is planned, proven and its faults are tried. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3)
@Measurement(iterations = 7)
@Fork(1)
public class PapersTime {

    private static final ShopFacts SHOP = new ShopFacts(
            Optional.empty(),
            History.NONE,
            Optional.empty(),
            ShopAddress.in("https://bench.example:8443"),
            List.of(),
            Locale.ENGLISH);

    private @Nullable Material material;

    /** Plans, proves and tries the faults once. */
    @Setup
    public void plan() {
        Brief brief = BakeryVan.brief();
        PlannedJob job = new Weigher().weigh(brief);
        material = new Material(
                brief, job.plan(), job.proof(), Optional.of(faults(brief, job)), "format: loomproof plan 1\n");
    }

    private static FaultProof faults(Brief brief, PlannedJob job) {
        return FaultProver.prove(brief, job.plan(), FaultWatch.PATIENT);
    }

    /** For a browser: pages, drawings, tables and texts. */
    @Benchmark
    public List<Paper> pages() {
        return papers(Optional.empty());
    }

    /** The same and every page printed on A4. */
    @Benchmark
    public List<Paper> printed() {
        return papers(Optional.of(Sheet.A4));
    }

    private List<Paper> papers(Optional<Sheet> print) {
        return Papers.of(requireNonNull(material), SHOP, print, Messages.english());
    }
}
