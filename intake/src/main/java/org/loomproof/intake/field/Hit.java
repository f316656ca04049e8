package org.loomproof.intake.field;

import java.util.List;

/**
 * A phrase of a lexicon found in a text.
 *
 * @param ideas what the phrase may mean; more than one when it is ambiguous
 * @param from offset of its first character
 * @param to offset behind its last
 * @param match how well it fits
 */
public record Hit(List<String> ideas, int from, int to, Match match) {

    /** How a word was recognised, best first. */
    public enum Match {
        /** As it stands in the lexicon, but for endings. */
        EXACT,
        /** Put together from words of the lexicon. */
        COMPOUND,
        /** One or two letters off. */
        MISSPELT,
        /** Further off, but sounds the same. */
        BY_EAR;

        /** True for a word that is not quite one of the lexicon's. */
        public boolean isOff() {
            return this == MISSPELT || this == BY_EAR;
        }
    }

    public Hit {
        ideas = List.copyOf(ideas);
    }

    public boolean isExact() {
        return match == Match.EXACT;
    }

    /** True for a word that is not quite one of the lexicon's. */
    public boolean isOff() {
        return match.isOff();
    }

    public boolean means(String idea) {
        return ideas.contains(idea);
    }
}
