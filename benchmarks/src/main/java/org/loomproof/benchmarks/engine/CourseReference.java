package org.loomproof.benchmarks.engine;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.loomproof.network.reference.Course;
import org.loomproof.network.reference.CourseDeck;
import org.loomproof.network.time.Trace;

/** The reference's side of a course: at which settings it is out by how much, and how long it takes. */
final class CourseReference {
    private static final double ENOUGH_MICROS = 100_000;

    /** The longest step the reference takes by itself is a fiftieth of the run. */
    private static final int USUAL_STEPS = 50;

    private static final int EXACT_STEPS = 40_000;

    /** What both sides share; the rest is the reference's own choice unless asked otherwise. */
    private static final String SHARED = "gmin=1e-12 itl1=2000 itl4=200 temp=27 tnom=27 ";

    private final Path driver;
    private final Path folder;
    private final Course course;
    private final List<String> lines;
    private final List<String> vectors = new ArrayList<>(List.of("time"));
    private final List<Double> jumps;
    private final Optional<CourseRun> exact;

    /**
     * A setting that was tried, with what came out.
     *
     * @param micros of that one run
     */
    record Tried(String options, int leastSteps, int points, double errorVolts, double micros) {}

    private CourseReference(Path driver, Path folder, Course course, Trace trace)
            throws IOException, InterruptedException {
        this.driver = driver;
        this.folder = folder;
        this.course = course;
        CourseDeck deck = new CourseDeck(course, trace);
        lines = deck.lines();
        vectors.addAll(deck.voltages());
        jumps = trace.jumps();
        List<double[]> points = run("method=gear reltol=1e-6 vntol=1e-9 abstol=1e-12", EXACT_STEPS, vectors, 1)
                .answers()
                .getFirst();
        exact = points.isEmpty() ? Optional.empty() : Optional.of(CourseRun.of(points));
    }

    /** Nothing when it gives up at its closest. */
    static Optional<CourseReference> of(Path driver, Path folder, Course course, Trace trace)
            throws IOException, InterruptedException {
        CourseReference reference = new CourseReference(driver, folder, course, trace);
        return reference.exact.map(found -> reference);
    }

    CourseRun exact() {
        return exact.orElseThrow();
    }

    private ReferenceRun run(String options, int leastSteps, List<String> wanted, int times)
            throws IOException, InterruptedException {
        List<String> deck = new ArrayList<>(lines);
        deck.add(".options " + SHARED + options);
        deck.add(".end");
        double step = course.seconds() / leastSteps;
        String command = "tran " + step + " " + course.seconds() + " 0 " + step;
        return ReferenceRun.of(driver, folder, deck, Collections.nCopies(times, command), wanted);
    }

    private Optional<Tried> attempt(String options, int leastSteps) throws IOException, InterruptedException {
        ReferenceRun run = run(options, leastSteps, vectors, 1);
        List<double[]> points = run.answers().getFirst();
        return points.isEmpty()
                ? Optional.empty()
                : Optional.of(new Tried(
                        options,
                        leastSteps,
                        points.size(),
                        CourseRun.of(points).errorVolts(exact(), jumps),
                        run.micros()));
    }

    /** With the tolerances and the method it has when nothing is said. */
    Optional<Tried> asItComes() throws IOException, InterruptedException {
        return attempt("", USUAL_STEPS);
    }

    /** The cheapest setting of those tried at which it is out by no more: both its methods, closer and closer, shorter and shorter. */
    Optional<Tried> cheapest(double errorVolts) throws IOException, InterruptedException {
        List<Tried> tried = new ArrayList<>();
        for (double reltol = 1e-3; reltol > 1e-6; reltol *= Math.pow(10, -0.125)) {
            attempt(String.format(Locale.ROOT, "reltol=%.2e", reltol), USUAL_STEPS)
                    .ifPresent(tried::add);
        }
        for (double reltol = 1e-3; reltol > 1e-6; reltol *= 0.1) {
            attempt(String.format(Locale.ROOT, "method=gear reltol=%.0e", reltol), USUAL_STEPS)
                    .ifPresent(tried::add);
        }
        for (int steps = 500; steps < 20_000; steps = steps * 5 / 4) {
            for (String reltol : List.of("reltol=1e-3", "reltol=1e-4", "reltol=1e-5")) {
                attempt(reltol, steps).ifPresent(tried::add);
            }
        }
        return tried.stream()
                .filter(each -> each.errorVolts() <= errorVolts)
                .min(Comparator.comparingDouble(Tried::micros));
    }

    /** Microseconds of processor time a run, without fetching what it found. */
    double micros(Tried tried) throws IOException, InterruptedException {
        int times = (int) Math.ceil(ENOUGH_MICROS / tried.micros());
        return run(tried.options(), tried.leastSteps(), List.of(), times).micros();
    }
}
