package org.loomproof.workshop.prover.explore;

import java.util.List;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.workshop.words.Phrase;

/** What came of solving one network in one situation. */
public sealed interface Answers {

    /** Every point at which contacts were found to rest, whatever came before; at least one. */
    record AtRest(List<OperatingPoint> points) implements Answers {
        public AtRest {
            points = List.copyOf(points);
        }
    }

    /** Contacts that never rest: they chatter in the car. */
    record Chatters(Phrase words) implements Answers {}

    /** No answer was found; nothing can be said. */
    record Lost(Phrase words) implements Answers {}
}
