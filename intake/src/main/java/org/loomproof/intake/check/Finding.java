package org.loomproof.intake.check;

import java.util.List;
import org.loomproof.workshop.words.Phrase;

/**
 * Something about entries that a person has to settle. No entry is dropped for it: they stay side by side.
 *
 * @param kind what is the matter
 * @param entries which entries, by their place in the notes, from 0
 * @param says the matter in words
 * @param ask what would settle it
 */
public record Finding(Kind kind, List<Integer> entries, Phrase says, Phrase ask) {

    /** What may be the matter. */
    public enum Kind {
        /** A wire of that use cannot switch that way. */
        CONTRADICTION,
        /** Two entries cannot both be true of one circuit. */
        CONFLICT,
        /** Two entries say the same. */
        SAID_TWICE
    }

    public Finding {
        entries = List.copyOf(entries);
    }
}
