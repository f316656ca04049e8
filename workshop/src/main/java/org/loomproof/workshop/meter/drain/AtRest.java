package org.loomproof.workshop.meter.drain;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.loomproof.workshop.meter.drain.Course.Burst;
import org.loomproof.workshop.meter.drain.DrainFinding.Waking;

/** What is drawn, and how often the car wakes, once it rests. */
final class AtRest {

    /** Wakings whose distances differ by no more than this share follow a clock. Common practice, no published source. */
    private static final double REGULAR = 0.25;

    private static final int LEAST_DISTANCES = 2;

    /** Two ends, each evenly spread over the time between two samples: √(2/12). */
    private static final double ENDS = 0.41;

    /** Spread of the turns of one clock. Common practice, no published source. */
    private static final double TURNS = 0.15;

    private AtRest() {}

    /** The mean over the time at rest; with wakings from the first to the last, so that whole turns are counted. */
    static double meanAmps(List<Sample> samples, Course course) {
        List<Burst> bursts = course.burstsAtRest();
        if (bursts.size() < 2) {
            return course.floor().amps();
        }
        double from = bursts.getFirst().fromMinutes();
        double to = bursts.getLast().fromMinutes();
        double[] area = {0};
        IntStream.range(1, samples.size()).forEach(k -> {
            Sample before = samples.get(k - 1);
            Sample now = samples.get(k);
            if (before.minutes() >= from && now.minutes() <= to) {
                area[0] += (now.minutes() - before.minutes()) * (before.amps() + now.amps()) / 2;
            }
        });
        return to > from
                ? Math.max(area[0] / (to - from), course.floor().amps())
                : course.floor().amps();
    }

    /**
     * How far off the mean may be for seeing few wakings, each by a few samples: two standard deviations as a share of it. The
     * ends of a waking fall anywhere between two samples, and turns differ from each other.
     */
    static double wakingError(List<Sample> samples, Course course, double meanAmps) {
        List<Burst> bursts = course.burstsAtRest();
        if (bursts.size() < 2) {
            return 0;
        }
        double between = (samples.getLast().minutes() - samples.getFirst().minutes()) / Math.max(1, samples.size() - 1);
        double lasts = bursts.stream()
                .mapToDouble(b -> b.toMinutes() - b.fromMinutes())
                .average()
                .orElse(between);
        double share = 1 - course.floor().amps() / meanAmps;
        double one = Math.hypot(ENDS * between / lasts, TURNS);
        return 2 * share * one / Math.sqrt(bursts.size() - 1.0);
    }

    /** How it wakes; nothing where it never did. */
    static Optional<Waking> waking(Course course) {
        List<Burst> bursts = course.burstsAtRest();
        if (bursts.isEmpty()) {
            return Optional.empty();
        }
        double[] apart = IntStream.range(1, bursts.size())
                .mapToDouble(
                        k -> bursts.get(k).fromMinutes() - bursts.get(k - 1).fromMinutes())
                .sorted()
                .toArray();
        OptionalDouble middle = apart.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(apart[apart.length / 2]);
        boolean isRegular = apart.length >= LEAST_DISTANCES
                && Arrays.stream(apart).allMatch(a -> Math.abs(a - middle.orElse(0)) <= REGULAR * middle.orElse(0));
        return Optional.of(new Waking(
                bursts.size(),
                middle,
                isRegular,
                bursts.stream().mapToDouble(Burst::amps).max().orElse(0)));
    }
}
