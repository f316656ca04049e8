package org.loomproof.workshop.meter.comeback;

import org.loomproof.workshop.brief.text.Words;

/**
 * What an owner complains of, in the words of the trade.
 *
 * <p>Each says how often a car without any fault of the plan shows it among those that come back with it: common practice, no
 * published source, and taken on the high side, so that the factory's own troubles stay in the picture.
 */
public enum Symptom {
    /** The engine does not turn although the system is disarmed. */
    NO_START(0.25),
    /** It starts although the system is armed. */
    STARTS_ARMED(0.02),
    /** A running engine stops. */
    ENGINE_STOPS(0.5),
    /** Alarm without a cause. */
    FALSE_ALARMS(0.15),
    /** An opening is opened while armed, and nothing happens. */
    OPENING_MISSED(0.05),
    SIREN_SILENT(0.03),
    /** Parking lamps do not flash. */
    NO_FLASH(0.1),
    /** The remote does not lock or unlock. */
    LOCKS_DEAD(0.15),
    /** Locks work by themselves, or go to and fro. */
    LOCKS_CYCLE(0.15),
    /** Lamps glow, or do not light as they did. */
    LAMPS_GLOW(0.15),
    /** Something else of the car no longer works as before. */
    CAR_PART_DEAD(0.4),
    FLAT_BATTERY(0.5),
    /** The system does not answer at all. */
    SYSTEM_DEAD(0.1),
    FUSE_BLOWS(0.15),
    /** Something is hot, or smells. */
    HOT(0.3),
    /** The remote works from near only: nothing that a voltage on a wire shows, unless the feed is poor. */
    SHORT_RANGE(0.9);

    private final double elsewhereShare;

    Symptom(double elsewhereShare) {
        this.elsewhereShare = elsewhereShare;
    }

    /** The chance that a cause outside the plan shows it, 0 to 1. */
    double elsewhereShare() {
        return elsewhereShare;
    }

    /** The word used on the command line and in files, such as {@code false-alarms}. */
    public String word() {
        return Words.of(this);
    }
}
