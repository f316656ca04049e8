package org.loomproof.workshop.brief.kit;

/** How an output acts in the states that use it. */
public enum OutputTiming {
    /** On as long as the state lasts. */
    STEADY,
    /** On once, for its pulse length, when the state is entered. */
    PULSE,
    /** On once when the command that led to the state is given again. */
    SECOND_PULSE,
    /** On and off by turns. */
    FLASHING
}
