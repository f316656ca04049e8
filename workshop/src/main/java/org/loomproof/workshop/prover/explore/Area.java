package org.loomproof.workshop.prover.explore;

import java.util.List;
import java.util.Set;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.wiring.ControllerParts;
import org.loomproof.workshop.wiring.Wired;

/**
 * Parts that are joined in the stock or in the fitted vehicle, by anything but the battery's posts and the body, or by a relay.
 * Nothing outside an area can change what happens inside: posts and body are held firm.
 *
 * @param parts all of them, factory and added
 * @param touched whether the fitted vehicle differs from the stock one here
 */
public record Area(Set<PartId> parts, boolean touched) {

    public Area {
        parts = Set.copyOf(parts);
    }

    /** Finds the areas of a vehicle, in the order of their first parts. */
    public static List<Area> list(Wired stock, Wired fitted) {
        return new AreaFinder(stock, fitted).list();
    }

    /** The areas of a damaged vehicle: what is joined in any of the three, so that each can be looked at by itself in all. */
    public static List<Area> list(Wired stock, Wired fitted, Wired damaged) {
        return new AreaFinder(stock, damaged, Set.of(), List.of(fitted)).list();
    }

    /** What the areas fall into while the controller's own supply and ground are taken to be held as well. */
    public static List<Area> blocks(Wired stock, Wired fitted) {
        ControllerParts controller = fitted.controller().orElseThrow();
        return new AreaFinder(stock, fitted, Set.of(controller.supply(), controller.ground()), List.of()).list();
    }
}
