package org.loomproof.workshop.meter.comeback;

/** What the engine says a meter shows at a look. */
public sealed interface Shows {

    /** A voltage against the body. */
    record At(double volts) implements Shows {}

    /** Nothing holds the place: the meter wanders about 0 V. */
    record Floating() implements Shows {}

    /** Contacts do not come to rest, or there is no such place in this car. */
    record Anything() implements Shows {}
}
