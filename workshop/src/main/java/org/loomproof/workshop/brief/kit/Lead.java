package org.loomproof.workshop.brief.kit;

import java.util.Optional;
import org.loomproof.workshop.brief.Basis;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.trade.colour.WireColour;

/**
 * One wire of the security system as it comes out of the box.
 *
 * @param id its name in the kit
 * @param plug the plug it comes from
 * @param position its place in that plug
 * @param colour its insulation, when said
 * @param size its cross-section
 * @param role what it is meant for
 * @param port what it is electrically
 * @param alwaysUsed whether the kit cannot work without it
 * @param note free text
 * @param basis the line it stands on
 */
public record Lead(
        LeadId id,
        String plug,
        String position,
        Optional<WireColour> colour,
        Figure<SquareMillimetres> size,
        LeadRole role,
        Port port,
        boolean alwaysUsed,
        String note,
        Basis basis) {

    /** The same lead with another port. */
    public Lead withPort(Port other) {
        return new Lead(id, plug, position, colour, size, role, other, alwaysUsed, note, basis);
    }
}
