package org.loomproof.pages.bay;

import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.words.Phrase;

/**
 * What the readings say of the wire that a step is at.
 *
 * @param kind in one word
 * @param reasons why, the weightiest first
 * @param next what to measure next, and in words; nothing when enough is known, or nothing would tell more
 * @param cautions what to heed
 */
public record CircuitAnswer(Kind kind, List<Phrase> reasons, Optional<Next> next, List<Phrase> cautions) {

    /** A reading to take. */
    public record Next(MeterAt at, Phrase what) {}

    /** The answers. */
    public enum Kind {
        /** Nothing was read yet. */
        NOTHING_YET,
        /** It may be joined. */
        THIS_IS_IT,
        /** Not decided. */
        ONE_MORE,
        /** Another wire. */
        NOT_IT,
        /** To be left alone, the meter included. */
        LEAVE_ALONE
    }

    public CircuitAnswer {
        reasons = List.copyOf(reasons);
        cautions = List.copyOf(cautions);
    }

    /** True when the wire may be joined. */
    public boolean isIt() {
        return kind == Kind.THIS_IS_IT;
    }
}
