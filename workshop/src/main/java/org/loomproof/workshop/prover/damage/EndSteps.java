package org.loomproof.workshop.prover.damage;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.workshop.prover.explore.Variations;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Warmth;
import org.loomproof.workshop.words.Phrase;

/** A corner in words, as the last steps of a witness. */
final class EndSteps {

    private EndSteps() {}

    /** What a corner takes beyond a car at room temperature with every figure at its typical value. */
    static List<Phrase> of(Corner corner, Variations variations, Celsius warmth) {
        List<Phrase> steps = new ArrayList<>();
        for (Variations.Variation each : variations.all()) {
            String key = each.figure().key();
            if (corner.taken(key) == each.taken() && !key.equals(Warmth.KEY)) {
                steps.add(Phrase.of(
                        "step.figure",
                        key,
                        each.taken() == Corner.Taken.LOW
                                ? each.figure().figure().low()
                                : each.figure().figure().high()));
            }
        }
        if (corner.taken(Warmth.KEY) != Corner.Taken.TYPICAL) {
            steps.add(Phrase.of("step.warmth", warmth));
        }
        return steps;
    }
}
