package org.loomproof.workshop.prover.reach;

import java.util.Arrays;

/**
 * What some clocks may show at once: every difference of two of them has a bound. The bounds are kept as tight as they can be, so
 * that one zone lies in another where each of its bounds does (difference bound matrices: Dill 1989; Bengtsson and Yi 2004, from
 * memory). Seconds throughout; clocks are counted from one, clock zero always shows zero.
 */
final class Zone {

    private static final double SAME_SECONDS = 1e-9;

    private final int size;

    /** At {@code i * size + j}: the most by which clock i is ahead of clock j. */
    private final double[] most;

    private Zone(int size, double[] most) {
        this.size = size;
        this.most = most;
    }

    /** All clocks show zero. */
    static Zone start(int clocks) {
        return new Zone(clocks + 1, new double[(clocks + 1) * (clocks + 1)]);
    }

    /** Any time later. */
    Zone later() {
        double[] next = most.clone();
        for (int i = 1; i < size; i++) {
            next[i * size] = Double.POSITIVE_INFINITY;
        }
        return new Zone(size, next);
    }

    /** Where the clock shows no more. */
    Zone atMost(int clock, double seconds) {
        return bounded(clock, 0, seconds);
    }

    /** Where the clock shows no less. */
    Zone atLeast(int clock, double seconds) {
        return bounded(0, clock, -seconds);
    }

    private Zone bounded(int i, int j, double bound) {
        if (most[i * size + j] <= bound) {
            return this;
        }
        double[] next = most.clone();
        next[i * size + j] = bound;
        return new Zone(size, tightened(next));
    }

    private double[] tightened(double[] bounds) {
        for (int k = 0; k < size; k++) {
            for (int i = 0; i < size; i++) {
                for (int j = 0; j < size; j++) {
                    bounds[i * size + j] = Math.min(bounds[i * size + j], bounds[i * size + k] + bounds[k * size + j]);
                }
            }
        }
        return bounds;
    }

    /** The clock set to zero. */
    Zone reset(int clock) {
        double[] next = most.clone();
        for (int j = 0; j < size; j++) {
            next[clock * size + j] = most[j];
            next[j * size + clock] = most[j * size];
        }
        next[clock * size + clock] = 0;
        return new Zone(size, next);
    }

    /** Nothing is asked of the clock any longer. */
    Zone free(int clock) {
        double[] next = most.clone();
        for (int j = 0; j < size; j++) {
            next[clock * size + j] = Double.POSITIVE_INFINITY;
            next[j * size + clock] = most[j * size];
        }
        next[clock * size + clock] = 0;
        return new Zone(size, next);
    }

    /** What no bound of at most so many seconds tells apart is one: so there is an end to the zones. */
    Zone coarse(double seconds) {
        double[] next = most.clone();
        for (int k = 0; k < next.length; k++) {
            if (next[k] > seconds) {
                next[k] = Double.POSITIVE_INFINITY;
            } else if (next[k] < -seconds) {
                next[k] = -seconds;
            }
        }
        return new Zone(size, tightened(next));
    }

    boolean isEmpty() {
        for (int i = 0; i < size; i++) {
            if (most[i * size + i] < -SAME_SECONDS) {
                return true;
            }
        }
        return false;
    }

    /** Whether all of the other lies in this one. */
    boolean holds(Zone other) {
        for (int k = 0; k < most.length; k++) {
            if (other.most[k] > most[k] + SAME_SECONDS) {
                return false;
            }
        }
        return true;
    }

    @Override
    public String toString() {
        return Arrays.toString(most);
    }
}
