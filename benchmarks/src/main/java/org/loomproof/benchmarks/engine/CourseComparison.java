package org.loomproof.benchmarks.engine;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.loomproof.network.reference.Course;
import org.loomproof.network.reference.RandomCourse;
import org.loomproof.network.time.CrankingCircuit;

/**
 * Ours and the reference on the same courses in time, turn by turn in the same minutes: processor time of one thread against that
 * of one process, with the real errors of both, each against a far closer run of its own. Twice: with the reference as it comes,
 * ours then being no less close than it turns out to be; and both as loose as 5e-4 V lets them be.
 */
final class CourseComparison {
    private static final double CLOSE_VOLTS = 5e-4;

    private final int rounds;
    private final List<Double> looseMedians = new ArrayList<>();
    private final List<Double> closeMedians = new ArrayList<>();

    private CourseComparison(int rounds) {
        this.rounds = rounds;
    }

    /** Arguments: the compiled driver, a folder for decks and answers, rounds, seed of the random courses. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        CourseComparison comparison = new CourseComparison(Integer.parseInt(arguments[2]));
        long seed = Long.parseLong(arguments[3]);
        System.out.println("least / median / most of the rounds; one thread, processor time; Kirchhoff's law is checked"
                + " at the end of every step within the timed part");
        for (Map.Entry<String, Course> each : courses(seed).entrySet()) {
            CourseTimer ours = new CourseTimer(each.getValue());
            Optional<CourseReference> reference = CourseReference.of(
                    Path.of(arguments[0]), Path.of(arguments[1]), each.getValue(), ours.exactTrace());
            if (reference.isPresent()) {
                comparison.compare(each.getKey(), ours, reference.get());
            } else {
                System.out.println(each.getKey() + ": the reference gave up at its closest setting; left out");
            }
        }
        comparison.sumUp("loose", comparison.looseMedians);
        comparison.sumUp("at 5e-4 V", comparison.closeMedians);
    }

    private static Map<String, Course> courses(long seed) {
        Map<String, Course> courses = new LinkedHashMap<>();
        courses.put("coil, cranked", CrankingCircuit.course());
        for (int loads : new int[] {4, 8, 15, 30, 120}) {
            for (long k = 0; k < 2; k++) {
                courses.put("drawn from " + (seed + k) + ", " + loads + " loads", RandomCourse.of(seed + k, loads));
            }
        }
        return courses;
    }

    private void compare(String name, CourseTimer ours, CourseReference reference)
            throws IOException, InterruptedException {
        System.out.printf(
                Locale.ROOT,
                "%s: %d nodes, %d parts, %d jumps; closest runs differ by %.1e V%n",
                name,
                ours.network().nodes().size() - 1,
                ours.network().parts().size(),
                ours.exactTrace().jumps().size(),
                reference.exact().errorVolts(ours.exact(), ours.exactTrace().jumps()));
        Optional<CourseReference.Tried> asItComes = reference.asItComes();
        Optional<CourseReference.Tried> close = reference.cheapest(CLOSE_VOLTS);
        looseMedians.addAll(compare("loose", ours, reference, asItComes));
        closeMedians.addAll(compare("5e-4 V", ours, reference, close));
    }

    private List<Double> compare(
            String accuracy, CourseTimer ours, CourseReference reference, Optional<CourseReference.Tried> found)
            throws IOException, InterruptedException {
        if (found.isEmpty()) {
            System.out.printf("    %-7s the reference gave up or came nowhere near%n", accuracy);
            return List.of();
        }
        CourseReference.Tried tried = found.get();
        double allowed = accuracy.equals("loose") ? tried.errorVolts() : CLOSE_VOLTS;
        CourseTimer.Tried mine = ours.loosest(allowed);
        ours.warmUp(mine);
        double[] micros = new double[rounds];
        double[] ratio = new double[rounds];
        for (int round = 0; round < rounds; round++) {
            micros[round] = ours.micros(mine);
            ratio[round] = reference.micros(tried) / micros[round];
        }
        System.out.printf(
                Locale.ROOT,
                "    %-7s ours %s us, %.0e a step, %d steps, out by %.1e V | reference %s, at least %d steps, %d points, out by %.1e V | ratio %s%n",
                accuracy,
                Comparison.spread(micros),
                mine.tolerance(),
                mine.steps(),
                mine.errorVolts(),
                tried.options().isEmpty() ? "as it comes" : tried.options(),
                tried.leastSteps(),
                tried.points(),
                tried.errorVolts(),
                Comparison.spread(ratio));
        Arrays.sort(ratio);
        return List.of(ratio[rounds / 2]);
    }

    private void sumUp(String accuracy, List<Double> medians) {
        System.out.printf(
                "%s: medians of %d courses, least / median / most %s%n",
                accuracy,
                medians.size(),
                Comparison.spread(
                        medians.stream().mapToDouble(Double::doubleValue).toArray()));
    }
}
