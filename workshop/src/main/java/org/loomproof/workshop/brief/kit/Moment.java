package org.loomproof.workshop.brief.kit;

/** Which part of a controller state is meant. */
public enum Moment {
    /** Everything the state switches on is on: pulses have begun, what flashes is lit. */
    ACTING,
    /** Pulses are over, what flashes is dark: only what is steady is on. */
    SETTLED
}
