package org.loomproof.workshop.planner.survey;

import java.util.List;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.words.Phrase;

/** How openings come to be seen. */
public sealed interface Sight {

    /**
     * By factory wires and added pins together.
     *
     * @param circuits the fewest factory wires that show every opening that factory wires show
     * @param pins the openings that need a pin of their own, each with the reason
     */
    record Seen(List<Circuit> circuits, List<NeedsPin> pins) implements Sight {
        public Seen {
            circuits = List.copyOf(circuits);
            pins = List.copyOf(pins);
        }
    }

    /** A measurement must come first. */
    record Unclear(Found.Waiting waiting) implements Sight {}

    /** An opening that no factory wire can show, and why. */
    record NeedsPin(OperableId opening, Phrase because) {}
}
