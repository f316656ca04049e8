package org.loomproof.workshop.prover.verdict;

import java.util.List;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/**
 * How to see a broken claim in the car: the fewest steps, and what is then seen.
 *
 * @param steps what a person does, in order
 * @param situation the situation reached
 * @param seen the volts and amps to be seen there
 */
public record Witness(List<Phrase> steps, Situation situation, List<Observation> seen) {

    public Witness {
        steps = List.copyOf(steps);
        seen = List.copyOf(seen);
    }
}
