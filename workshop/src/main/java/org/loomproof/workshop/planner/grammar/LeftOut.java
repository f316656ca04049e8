package org.loomproof.workshop.planner.grammar;

import java.util.Locale;

/** Why a word of the grammar is not offered. Each is an argument that needs no proof, or a reckoning with pencil and paper. */
public enum LeftOut {
    /** A part does nothing in any state: without it the word is the same. */
    IDLE_PART,
    /** It joins supply and body in some state. */
    SHORT,
    /** A wire that is cut is not whole while the source rests, so that the car's own switch is dead. */
    OPENS_WIRE,
    /** It holds the target at a pole while the source is at rest, so that the car's own switch is idle or fights it. */
    WORKS_AT_REST,
    /** It does not give the target its pole while the source works. */
    NEVER_WORKS,
    /** What reads a wire would put a pole on it. */
    FEEDS_WIRE,
    /** A coil is held while nothing happens, and empties the battery. */
    DRAWS_AT_REST,
    /** Targets, or sources, would feed one another. */
    JOINS_TARGETS,
    /** A word with fewer parts gives the target the same. */
    SAME_WITH_FEWER,
    /** A coil is let go of with no way for its current. */
    NO_WAY_FOR_KICK,
    /** It would feed a controller that has lost its supply. */
    FEEDS_DEAD_CONTROLLER,
    /** A part at hand does not tell the wire's two levels apart. */
    LEVEL,
    /** Too much current for the output, the wire that is read, or any part at hand. */
    CURRENT,
    /** There is no feed for it. */
    NO_SUPPLY;

    /** The word used in messages and results. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
