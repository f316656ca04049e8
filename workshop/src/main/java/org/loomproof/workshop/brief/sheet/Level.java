package org.loomproof.workshop.brief.sheet;

import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;

/** What a meter finds on a wire against the body: what the wire is held at, and through what. */
public sealed interface Level {

    /** Held at the body. */
    record Ground() implements Level {}

    /** Held at the battery's plus. */
    record Supply() implements Level {}

    /** Held by nothing. */
    record Open() implements Level {}

    /** Held at the body through a resistance. */
    record Resistance(Ohms ohms) implements Level {}

    /** Held at a voltage of its own, such as 5 V by a body computer. */
    record Voltage(Volts volts) implements Level {}

    /** A motor leg of a reversing pair: either pole, by turns. */
    record Reversing() implements Level {}

    /** Messages, never to be touched. */
    record Data() implements Level {}
}
