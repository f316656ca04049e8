package org.loomproof.workshop.plan;

import java.util.Optional;
import java.util.stream.Stream;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.SquareMillimetres;

/**
 * A wire that the work adds, or the kit's lead itself up to where it ends.
 *
 * @param id its name in the plan
 * @param from one end
 * @param to the other
 * @param length run length, one way
 * @param size conductor cross-section
 */
public record AddedWire(WireId id, End from, End to, Metres length, SquareMillimetres size) {

    /** The kit's lead that this wire is, or goes on from. */
    public Optional<LeadId> lead() {
        return Stream.of(from, to)
                .filter(End.OfLead.class::isInstance)
                .map(end -> ((End.OfLead) end).lead())
                .findFirst();
    }
}
