package org.loomproof.workshop.brief.sheet;

import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.Basis;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.trade.colour.WireColour;

/**
 * One factory circuit, as known.
 *
 * @param id its name on the sheet
 * @param role what it is for
 * @param where where its wire is found
 * @param colour the wire's colour, when said
 * @param size the conductor's cross-section, when said
 * @param switching how it switches
 * @param follows what a person operates to make it active; empty for supplies and grounds
 * @param paths how current runs, each from one place to another; the first holds {@link PathStep.Here}. Empty until
 *     completed when the sheet gave none
 * @param access what may be done to the wire
 * @param basis how sure, and the line it stands on
 * @param origin who or what said so
 * @param note free text
 */
public record Circuit(
        CircuitId id,
        CircuitRole role,
        Where where,
        Optional<WireColour> colour,
        Optional<Figure<SquareMillimetres>> size,
        Switching switching,
        List<OperableId> follows,
        List<List<PathStep>> paths,
        Access access,
        Basis basis,
        String origin,
        String note) {

    public Circuit {
        follows = List.copyOf(follows);
        paths = paths.stream().map(List::copyOf).toList();
    }

    /** The same with current running otherwise. */
    public Circuit withPaths(List<List<PathStep>> others) {
        return new Circuit(id, role, where, colour, size, switching, follows, others, access, basis, origin, note);
    }

    /** The same, switching otherwise. */
    public Circuit withSwitching(Switching other) {
        return new Circuit(id, role, where, colour, size, other, follows, paths, access, basis, origin, note);
    }
}
