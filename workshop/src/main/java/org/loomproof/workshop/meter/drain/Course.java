package org.loomproof.workshop.meter.drain;

import java.util.ArrayList;
import java.util.List;

/**
 * A log as a car goes to sleep: it falls, and what rises comes back to the floor that was reached before, or has woken it.
 *
 * @param plateaus all of them
 * @param floor the level it rests at in the end
 * @param awakeSinceMinutes when it began to go to sleep: 0, or the rise from which it did not come back
 * @param bursts rises that came back
 * @param falls how many plateaus went lower than any before
 * @param strays plateaus inside a rise beyond its first, and rises that did not come back
 */
record Course(
        List<Plateau> plateaus, Floor floor, double awakeSinceMinutes, List<Burst> bursts, int falls, int strays) {

    /** Levels are the same within this share and so many amps: temperature, ripple. Common practice, no published source. */
    private static final double SAME_SHARE = 0.15;

    private static final double SAME_AMPS = 0.004;

    /** A car that woke for a moment is down again by then. Common practice, no published source. */
    private static final double STAYS_UP_MINUTES = 5;

    /**
     * Where it rests.
     *
     * @param amps by all plateaus of that level
     * @param sinceMinutes when it got there
     * @param samples how many there are of it
     */
    record Floor(double amps, double sinceMinutes, int samples) {}

    /**
     * A rise that came back.
     *
     * @param fromMinutes its first sample
     * @param toMinutes the first sample back
     * @param amps the most it drew
     * @param samples how many it has: a single one may be a slip of the meter
     */
    record Burst(double fromMinutes, double toMinutes, double amps, int samples) {}

    static Course of(List<Plateau> plateaus) {
        Walk walk = new Walk(plateaus.getFirst());
        plateaus.stream().skip(1).forEach(walk::take);
        return walk.course(plateaus);
    }

    /** Those after it first came to its floor: what rose before met modules that were awake by themselves. */
    List<Burst> burstsAtRest() {
        return bursts.stream()
                .filter(burst -> burst.fromMinutes() >= floor.sinceMinutes())
                .toList();
    }

    private static boolean isAbove(double amps, double floor) {
        return amps > floor * (1 + SAME_SHARE) + SAME_AMPS;
    }

    /** The plateaus one by one. */
    private static final class Walk {
        private Floor floor;
        private final List<Burst> bursts = new ArrayList<>();
        private final List<Plateau> rise = new ArrayList<>();
        private int falls;
        private int strays;

        Walk(Plateau first) {
            floor = new Floor(first.amps(), first.fromMinutes(), first.samples());
        }

        void take(Plateau next) {
            if (isAbove(next.amps(), floor.amps())) {
                strays += rise.isEmpty() ? 0 : 1;
                rise.add(next);
                return;
            }
            if (!rise.isEmpty()) {
                close(next.fromMinutes());
            }
            if (isAbove(floor.amps(), next.amps())) {
                falls++;
                floor = new Floor(next.amps(), next.fromMinutes(), next.samples());
            } else {
                int all = floor.samples() + next.samples();
                double amps = (floor.amps() * floor.samples() + next.amps() * next.samples()) / all;
                floor = new Floor(amps, floor.sinceMinutes(), all);
            }
        }

        private void close(double minutes) {
            double most = rise.stream().mapToDouble(Plateau::amps).max().orElseThrow();
            int count = rise.stream().mapToInt(Plateau::samples).sum();
            bursts.add(new Burst(rise.getFirst().fromMinutes(), minutes, most, count));
            rise.clear();
        }

        /** A log may end while the car is awake for a moment; what rose and stayed up is where it rests now. */
        Course course(List<Plateau> plateaus) {
            boolean isUp = !rise.isEmpty()
                    && rise.getLast().toMinutes() - rise.getFirst().fromMinutes() >= STAYS_UP_MINUTES;
            if (!rise.isEmpty() && !isUp) {
                close(rise.getLast().toMinutes());
            }
            if (!isUp) {
                return new Course(plateaus, floor, 0, List.copyOf(bursts), falls, strays);
            }
            Plateau last = rise.getLast();
            return new Course(
                    plateaus,
                    new Floor(last.amps(), last.fromMinutes(), last.samples()),
                    rise.getFirst().fromMinutes(),
                    List.copyOf(bursts),
                    falls,
                    strays + 1);
        }
    }
}
