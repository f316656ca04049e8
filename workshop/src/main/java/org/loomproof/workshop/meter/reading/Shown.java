package org.loomproof.workshop.meter.reading;

/** What a meter showed, in the plain unit of what was measured. */
public sealed interface Shown {

    /**
     * A value that stood.
     *
     * @param value what was shown
     * @param resolution the last digit that was written down; five of it for {@code ~0}
     */
    record Steady(double value, double resolution) implements Shown {}

    /** A value that moved between two. */
    record Moving(double low, double high) implements Shown {
        public Moving {
            if (!(low <= high)) {
                throw new IllegalArgumentException("not rising: " + low + ", " + high);
            }
        }
    }

    /** A value in the alternating range. */
    record Alternating(double rms) implements Shown {}

    /** A value that wandered and held on to nothing. */
    record Floating() implements Shown {}

    /** {@code OL}: an open line in ohms, beyond the range otherwise. */
    record Overload() implements Shown {}

    /** Planned and not done. */
    record NotTaken() implements Shown {}
}
