package org.loomproof.workshop.brief.kit;

/** Which part of a controller state is meant. */
public enum Moment {
    /** Everything the state switches on is on: pulses have begun, what flashes is lit. */
    ACTING,
    /** The command that led to the state is given again: pulses that wait for that have begun, the others are over. */
    AGAIN,
    /** Pulses are over, what flashes is dark: only what is steady is on. */
    SETTLED
}
