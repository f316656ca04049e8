package org.loomproof.network.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringTokenizer;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Relay;
import org.loomproof.network.time.TimeEvent;
import org.loomproof.network.time.TimeEvent.CoilCalled;
import org.loomproof.network.time.TimeOptions;
import org.loomproof.network.time.TimeOutcome;
import org.loomproof.network.time.TimeSolver;
import org.loomproof.network.time.Trace;
import org.loomproof.testing.Note;
import org.loomproof.testing.Sample;

/**
 * Random networks in the course of time against ngspice: every node within 1 % of its peak (or, on a steep slope, 1 % of the time since something was last thrown), every call of a coil within 1 %
 * of the time since something was last thrown. Left out are some microseconds after a jump, in which the reference's contacts
 * take 1 us and ours none.
 */
class CourseComparisonTest {
    private static final int SAMPLE = 6;
    private static final int FULL = 100;

    /** The usual 1e-4 comes out at up to 1.1 % where a clamp lets go. */
    private static final TimeOptions OPTIONS = TimeOptions.USUAL.withTolerance(3e-5);

    private static final double LONGEST_STEP = 4e-6;
    private static final double LEFT_OUT_SECONDS = 30e-6;
    private static final long PATIENCE_SECONDS = 300;

    /** Peaks below this are of no account. */
    private static final double LEAST_PEAK_VOLTS = 0.5;

    @TempDir
    Path folder;

    @Test
    void coursesAgree() {
        NumericalReference.assumeInstalled();
        int compared = 0;
        int calls = 0;
        double worst = 0;
        List<Long> setAside = new ArrayList<>();
        List<Long> chattering = new ArrayList<>();
        int count = Sample.count(SAMPLE, FULL);
        for (long seed = 1; seed <= count; seed++) {
            Course course = RandomCourse.of(seed, 3 + (int) (seed % 14));
            TimeOutcome outcome = TimeSolver.of(course.network()).run(course.timeline(), course.seconds(), OPTIONS);
            if (outcome instanceof TimeOutcome.GaveUp gaveUp && gaveUp.reason() instanceof TimeOutcome.Chattering) {
                // An output whose own supply falls when it drives: the reference knows no such thing.
                chattering.add(seed);
                continue;
            }
            assertThat(outcome).as("seed %s", seed).isInstanceOf(TimeOutcome.Finished.class);
            Trace trace = outcome.finishedTrace();
            CourseDeck deck = new CourseDeck(course, trace);
            Optional<List<double[]>> rows = run(course, deck, seed);
            if (rows.isEmpty()) {
                setAside.add(seed);
                continue;
            }
            worst = Math.max(worst, compareVolts(seed, trace, rows.get()));
            calls += compareCalls(seed, deck, trace, rows.get());
            compared++;
        }
        Note.that(
                "courses compared with ngspice: %d, calls of coils %d, worst voltage %.2f %% of its peak, reference gave up %s, chattering %s"
                        .formatted(compared, calls, 100 * worst, setAside, chattering));
        assertThat(chattering.size()).isLessThanOrEqualTo(Math.max(1, count / 20));
        assertThat(setAside.size()).isLessThanOrEqualTo(Math.max(1, count / 50));
        assertThat(calls).isPositive();
    }

    /** What the reference wrote, a row a moment, time first; empty when it gave up. */
    private Optional<List<double[]>> run(Course course, CourseDeck deck, long seed) {
        try {
            Path output = folder.resolve("course" + seed + ".txt");
            Path file = folder.resolve("course" + seed + ".cir");
            Files.writeString(file, deck.text(LONGEST_STEP, output.toString()));
            Process process = new ProcessBuilder("ngspice", "-b", file.toString())
                    .redirectErrorStream(true)
                    .redirectOutput(folder.resolve("said.txt").toFile())
                    .start();
            if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                process.destroy();
                return Optional.empty();
            }
            if (!Files.exists(output)) {
                return Optional.empty();
            }
            List<double[]> rows = new ArrayList<>();
            for (String line : Files.readAllLines(output, StandardCharsets.ISO_8859_1)) {
                if (!line.isBlank() && !line.contains("time")) {
                    rows.add(numbers(line));
                }
            }
            Files.delete(output);
            return rows.isEmpty() || rows.getLast()[0] < course.seconds() * 0.999
                    ? Optional.empty()
                    : Optional.of(rows);
        } catch (IOException | InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static double[] numbers(String line) {
        StringTokenizer words = new StringTokenizer(line);
        double[] numbers = new double[words.countTokens()];
        for (int k = 0; k < numbers.length; k++) {
            numbers[k] = Double.parseDouble(words.nextToken());
        }
        return numbers;
    }

    private static double compareVolts(long seed, Trace trace, List<double[]> rows) {
        List<Node> nodes = trace.network().nodes();
        List<double[]> quiet = rows.stream()
                .filter(row -> row[0] <= trace.seconds() && isQuiet(trace.jumps(), row[0]))
                .toList();
        double worst = 0;
        int steep = 0;
        for (int n = 1; n < nodes.size(); n++) {
            int column = n;
            double peak =
                    rows.stream().mapToDouble(row -> Math.abs(row[column])).reduce(LEAST_PEAK_VOLTS, Math::max);
            for (double[] row : quiet) {
                double ours = trace.volts(nodes.get(n), row[0]);
                double miss = Math.abs(ours - row[n]) / peak;
                if (miss > 0.01) {
                    miss = missNearby(trace, nodes.get(n), row[0], row[n]) / peak;
                    steep++;
                }
                assertThat(miss)
                        .as("seed %s, node %s at %s s: %s against %s", seed, nodes.get(n), row[0], ours, row[n])
                        .isLessThan(0.01);
                worst = Math.max(worst, miss);
            }
        }
        assertThat(steep)
                .as("seed %s, moments compared in time rather than volts", seed)
                .isLessThan(quiet.size() / 50);
        return worst;
    }

    /** Where a clamp lets go, a node falls within microseconds: there 1 % of the time since the last jump is what counts. */
    private static double missNearby(Trace trace, Node node, double seconds, double volts) {
        double last = trace.jumps().stream().filter(jump -> jump <= seconds).reduce(0.0, Math::max);
        double window = 0.01 * (seconds - last);
        double least = Double.POSITIVE_INFINITY;
        double greatest = Double.NEGATIVE_INFINITY;
        for (int k = -20; k <= 20; k++) {
            double ours = trace.volts(node, Math.min(trace.seconds(), seconds + k * window / 20));
            least = Math.min(least, ours);
            greatest = Math.max(greatest, ours);
        }
        return Math.max(0, Math.max(least - volts, volts - greatest));
    }

    private static boolean isQuiet(List<Double> jumps, double seconds) {
        return jumps.stream().noneMatch(jump -> seconds > jump - 1e-6 && seconds < jump + LEFT_OUT_SECONDS);
    }

    /** In the reference's current, the threshold is passed where ours was. */
    private static int compareCalls(long seed, CourseDeck deck, Trace trace, List<double[]> rows) {
        int firstCoil = trace.network().nodes().size();
        int compared = 0;
        for (TimeEvent event : trace.events()) {
            if (!(event instanceof CoilCalled called)) {
                continue;
            }
            Relay relay = (Relay) trace.network().part(called.relay());
            int column = firstCoil + deck.coils().indexOf(called.relay());
            double amps = (called.pullsIn() ? relay.pullInVolts() : relay.dropOutVolts()) / relay.coilOhms();
            double since = trace.jumps().stream()
                    .filter(jump -> jump < called.seconds())
                    .reduce(0.0, Math::max);
            double reference = passedAt(rows, column, amps, called);
            assertThat(called.seconds())
                    .as("seed %s, %s", seed, called)
                    .isCloseTo(reference, within(0.01 * (called.seconds() - since) + 2e-6));
            compared++;
        }
        return compared;
    }

    /** Where the reference's coil current passes a value nearest to where ours did. */
    private static double passedAt(List<double[]> rows, int column, double amps, CoilCalled called) {
        double best = Double.NaN;
        for (int k = 1; k < rows.size(); k++) {
            double before = Math.abs(rows.get(k - 1)[column]) - amps;
            double after = Math.abs(rows.get(k)[column]) - amps;
            boolean passes = called.pullsIn() ? before < 0 && after >= 0 : before > 0 && after <= 0;
            if (passes) {
                double from = rows.get(k - 1)[0];
                double at = from + (rows.get(k)[0] - from) * before / (before - after);
                if (Double.isNaN(best) || Math.abs(at - called.seconds()) < Math.abs(best - called.seconds())) {
                    best = at;
                }
            }
        }
        return best;
    }
}
