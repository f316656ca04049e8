package org.loomproof.workshop.prover.verdict;

import java.util.List;
import java.util.Locale;
import org.loomproof.workshop.words.Phrase;

/**
 * What comes of one thing that a thief may try in an armed car. A report, not a verdict: no plan resists everything.
 *
 * @param id stable, made of the threat's name and of ids
 * @param deed what is done, in words
 * @param load what is then to start, in words
 * @param outcome whether it does
 * @param steps what a person does besides, to see it; none where nothing turns
 */
public record ThreatResult(String id, Phrase deed, Phrase load, Outcome outcome, List<Phrase> steps) {

    public ThreatResult {
        steps = List.copyOf(steps);
    }

    /** Whether the engine can be started by it. */
    public enum Outcome {
        /** With the ignition on, by key or by another bridge, while armed, warning or sounding. */
        STARTS,
        /** With the ignition off alone: the starter turns, and the engine does not run. */
        TURNS_ONLY,
        /** Wherever the key and everything else stands. */
        DOES_NOT_START,
        /** No operating point was found somewhere. */
        UNDECIDED;

        /** The word used in files, such as {@code does-not-start}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }
}
