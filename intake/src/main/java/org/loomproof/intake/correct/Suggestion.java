package org.loomproof.intake.correct;

/**
 * What a shop once said about such a text.
 *
 * @param correction what it said most often, of several said as often the latest
 * @param times how often it said so
 * @param ofAll how often it said anything about it
 */
public record Suggestion(Correction correction, int times, int ofAll) {

    /** From 0 to 1, never either: the rule of succession, as if it had been right once and wrong once before anybody said anything. */
    public double sure() {
        return (times + 1.0) / (ofAll + 2.0);
    }
}
