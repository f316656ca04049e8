package org.loomproof.workshop.example;

import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.prover.FaultProof;
import org.loomproof.workshop.prover.FaultProver;
import org.loomproof.workshop.prover.FaultWatch;
import org.loomproof.workshop.weigh.PlannedJob;
import org.loomproof.workshop.weigh.Weigher;

/** The examples, planned, weighed and tried with every fault once: that is the long part, and several tests look at the same jobs. */
final class PlannedExamples {

    private static final Map<Path, PlannedJob> JOBS = new ConcurrentHashMap<>();

    private static final Map<Path, FaultProof> FAULTS = new ConcurrentHashMap<>();

    private PlannedExamples() {}

    static PlannedJob job(Path folder) {
        return JOBS.computeIfAbsent(folder, f -> new Weigher().weigh(ExamplesAreReadTest.brief(f)));
    }

    /** What every fault and slip does to the plan of {@link #job}; in full not kept, since there is one for each example then. */
    static FaultProof faults(Path folder) {
        return Sample.full() ? tried(folder) : FAULTS.computeIfAbsent(folder, PlannedExamples::tried);
    }

    private static FaultProof tried(Path folder) {
        return FaultProver.prove(ExamplesAreReadTest.brief(folder), job(folder).plan(), FaultWatch.PATIENT);
    }
}
