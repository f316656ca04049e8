package org.loomproof.workshop.planner.survey;

import java.util.Locale;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.Switching;
import org.loomproof.workshop.words.Phrase;

/** How a circuit switches, as far as the choice of a coupling depends on it. */
public enum Family {
    /** Becomes active by going to the body. */
    NEGATIVE,
    /** Becomes active by going to the supply. */
    POSITIVE,
    /** Held at rest and let go when active. */
    OPENS_WHEN_ACTIVE,
    /** Held at a voltage of its own by an electronic input. */
    LOGIC,
    /** Tells its states apart by resistances. */
    STEPPED,
    /** A motor leg: either pole, by turns. */
    REVERSING,
    /** Messages. */
    DATA,
    /** Rest and active are said to be the same. */
    CONTRADICTORY;

    /** The family of a circuit that switches so. */
    public static Family of(Switching switching) {
        Level rest = switching.rest();
        Level active = switching.active();
        if (rest instanceof Level.Data || active instanceof Level.Data) {
            return DATA;
        }
        if (rest instanceof Level.Reversing || active instanceof Level.Reversing) {
            return REVERSING;
        }
        if (rest.equals(active)) {
            return CONTRADICTORY;
        }
        return switch (active) {
            case Level.Ground() -> rest instanceof Level.Voltage ? LOGIC : NEGATIVE;
            case Level.Supply() -> POSITIVE;
            case Level.Open() -> rest instanceof Level.Voltage ? LOGIC : OPENS_WHEN_ACTIVE;
            case Level.Resistance(var ohms) -> STEPPED;
            case Level.Voltage(var volts) -> LOGIC;
            case Level.Reversing() -> REVERSING;
            case Level.Data() -> DATA;
        };
    }

    /** True when a lead can work it or read it by one of the two poles. */
    public boolean isPlain() {
        return this == NEGATIVE || this == POSITIVE;
    }

    /** The word used in messages. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** How it is said within a sentence. */
    public Phrase phrase() {
        return Phrase.of("term.family." + word());
    }
}
