package org.loomproof.network.law;

/** When a term counts, apart from faults. */
public enum When {
    ALWAYS,
    /** Not by itself: the place of a short between a part's two pins where no other term joins them. */
    NEVER,
    /** The setting says closed. */
    SET,
    /** The part's {@link Threshold} is passed: a relay pulled in. */
    PASSED,
    /** The part's threshold is not passed: a relay released. */
    NOT_PASSED,
    /** The setting says on and the threshold is passed: an output of a controller that is awake. */
    SET_AND_PASSED;

    /** Whether a term counts, given whether the setting says closed or on and whether the part's threshold is passed. */
    public boolean counts(boolean set, boolean passed) {
        return switch (this) {
            case ALWAYS -> true;
            case NEVER -> false;
            case SET -> set;
            case PASSED -> passed;
            case NOT_PASSED -> !passed;
            case SET_AND_PASSED -> set && passed;
        };
    }
}
