package org.loomproof.workshop.replay;

import java.util.List;

/**
 * What a controller does where its kit says nothing.
 *
 * @param readingSeconds how long an input must see a level
 * @param warningSeconds how long it warns
 * @param pulseSeconds how long a pulse lasts
 * @param flashSeconds how long what flashes is lit, and how long it is dark
 * @param cutsShort whether a command ends the pulses of the one before
 */
record Unsaid(
        double readingSeconds, double warningSeconds, double pulseSeconds, double flashSeconds, boolean cutsShort) {

    /** The ways that are tried: what is usual first. */
    static final List<Unsaid> WAYS = List.of(
            new Unsaid(1, 30, 5, 0.5, false), new Unsaid(1, 30, 5, 0.5, true), new Unsaid(1, 30, 3600, 0.5, false));
}
