package org.loomproof.workshop.prover.verdict;

import java.util.List;
import org.loomproof.workshop.brief.order.DeclaredChange;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/** What was found of one claim. */
public sealed interface Verdict {

    /**
     * Satisfied in every situation, wherever the assumed values lie in their ranges.
     *
     * @param tightest the least margin
     * @param deciding the situation that has it
     */
    record Holds(Margin tightest, Situation deciding) implements Verdict {}

    /** Not satisfied, with what was stated. */
    record Broken(Margin worst, Witness witness) implements Verdict {}

    /**
     * Satisfied but for one change that the order declares, and that surely comes about: allowed once the customer has signed.
     *
     * @param change what is declared
     * @param found how far it goes at typical values, in words
     * @param witness how to see it
     */
    record Declared(DeclaredChange change, Phrase found, Witness witness) implements Verdict {}

    /**
     * Not decided.
     *
     * @param because what is missing, in words
     * @param settledBy the readings that would decide it
     */
    record Open(Phrase because, List<Measurement> settledBy) implements Verdict {
        public Open {
            settledBy = List.copyOf(settledBy);
        }
    }
}
