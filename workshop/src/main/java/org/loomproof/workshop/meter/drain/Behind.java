package org.loomproof.workshop.meter.drain;

/** What may be behind a log of the current after locking. */
public enum Behind {
    /** Asleep, and drawing what car and plan draw. */
    IN_ORDER,
    /** A module is still awake, as it may be so soon after locking. */
    GOING_TO_SLEEP,
    /** More than car and plan draw, all the time. */
    STEADY_DRAIN,
    /** Something wakes again and again. */
    WAKES_AGAIN,
    /** Both of these. */
    STEADY_AND_WAKES,
    /** No car behaves so: a clamp that is off or the wrong way, a slipped range, a log of something else. */
    NONE_OF_THESE;

    /** True where something empties the battery that should not. */
    public boolean isDrain() {
        return switch (this) {
            case STEADY_DRAIN, WAKES_AGAIN, STEADY_AND_WAKES -> true;
            case IN_ORDER, GOING_TO_SLEEP, NONE_OF_THESE -> false;
        };
    }
}
