package org.loomproof.workshop.meter.drain;

import java.util.Optional;

/**
 * A fuse or a cable through which the drain may go.
 *
 * @param name as in the file, or the id of a fuse of the plan
 * @param way how its current is found
 * @param isOurs whether the plan added it
 * @param seen its current, where it was measured
 */
public record Branch(String name, Way way, boolean isOurs, Optional<Seen> seen) {

    /** How the current of a branch is found without opening it. */
    public enum Way {
        /** Millivolts across a fuse that stays where it is. */
        ACROSS_FUSE(0.5),
        /** A clamp around a cable. */
        CLAMP(1);

        private final double minutes;

        Way(double minutes) {
            this.minutes = minutes;
        }

        /** How long it takes. Common practice, no published source. */
        public double minutes() {
            return minutes;
        }
    }

    /**
     * A measured current.
     *
     * @param amps the likeliest value, 0 or more
     * @param errorAmps how far off it may be: standard deviation, above 0
     */
    public record Seen(double amps, double errorAmps) {}
}
