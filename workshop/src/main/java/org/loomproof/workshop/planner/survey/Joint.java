package org.loomproof.workshop.planner.survey;

/** What is to be done to a factory wire: decides how sure the sheet must be of it. */
public enum Joint {
    /** A tap that only reads or carries milliamps. */
    SIGNAL_TAP,
    /** A tap that carries a load. */
    POWER_TAP,
    /** The wire is cut. */
    CUT;

    /** True when a guess will not do. */
    public boolean needsMoreThanAGuess() {
        return this != SIGNAL_TAP;
    }
}
