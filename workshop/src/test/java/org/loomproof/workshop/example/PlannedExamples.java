package org.loomproof.workshop.example;

import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.loomproof.workshop.weigh.PlannedJob;
import org.loomproof.workshop.weigh.Weigher;

/** The examples, planned and weighed once: that is the long part, and several tests look at the same jobs. */
final class PlannedExamples {

    private static final Map<Path, PlannedJob> JOBS = new ConcurrentHashMap<>();

    private PlannedExamples() {}

    static PlannedJob job(Path folder) {
        return JOBS.computeIfAbsent(folder, f -> new Weigher().weigh(ExamplesAreReadTest.brief(f)));
    }
}
