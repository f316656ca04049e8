package org.loomproof.workshop.planner.survey;

import java.util.List;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.words.Phrase;

/** What came of looking for a circuit of a role. */
public sealed interface Found {

    /**
     * There it is.
     *
     * @param circuits one, or all that serve the role together
     * @param passedOver entries that were not taken, each with the reason
     */
    record Usable(List<Circuit> circuits, List<Phrase> passedOver) implements Found {
        public Usable {
            circuits = List.copyOf(circuits);
            passedOver = List.copyOf(passedOver);
        }

        /** The first, or the only one. */
        public Circuit first() {
            return circuits.getFirst();
        }
    }

    /** A measurement must come first. */
    record Waiting(Measurement until, Phrase because) implements Found {}

    /** It must not be joined at all. */
    record Forbidden(Phrase because, Phrase possibleIf) implements Found {}
}
