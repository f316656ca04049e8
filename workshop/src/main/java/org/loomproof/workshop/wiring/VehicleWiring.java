package org.loomproof.workshop.wiring;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.JoinedCircuits;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.words.Phrase;

/** Turns paper into networks: a sheet into the stock vehicle, a brief with a plan into the fitted one. */
public final class VehicleWiring {

    /**
     * Volts are given at the battery's posts, so what is left inside the battery is next to nothing: 1 mV at 100 A.
     * Factory circuits meet at the posts only.
     */
    public static final double POST_OHMS = 1e-5;

    private static final PartId BATTERY = new PartId("battery");

    private VehicleWiring() {}

    /**
     * The vehicle as it came, at room temperature. The sheet must be complete: a circuit without a path has no part in the
     * network.
     */
    public static Wired stock(Sheet sheet, Corner corner) {
        return cutOpen(sheet, Set.of(), corner);
    }

    /** The vehicle as it came, as warm as the corner says. */
    public static Wired stock(Brief brief, Corner corner) {
        return cutOpen(
                brief.sheet(), Set.of(), corner, Warmth.at(corner, brief.order().shop()));
    }

    /** The vehicle as it came, at room temperature, with the wires of these circuits cut and nothing put in their place. */
    public static Wired cutOpen(Sheet sheet, Set<CircuitId> cut, Corner corner) {
        return cutOpen(sheet, cut, corner, Warmth.ROOM);
    }

    private static Wired cutOpen(Sheet sheet, Set<CircuitId> cut, Corner corner, Celsius warmth) {
        Drawing drawing = begin(corner, warmth);
        FactoryParts factory = FactoryWiring.draw(sheet, cut, drawing);
        AddedParts nothing = new AddedParts(Map.of(), Map.of(), List.of());
        return end(drawing, factory, Optional.empty(), nothing);
    }

    /** The vehicle with the plan carried out, the kit set as the plan says. */
    public static Wired fitted(Brief given, Plan plan, Corner corner) {
        Brief brief = given.set(plan.settings());
        Drawing drawing = begin(corner, Warmth.at(corner, brief.order().shop()));
        FactoryParts factory = FactoryWiring.draw(brief.sheet(), JoinedCircuits.cut(plan), drawing);
        ControllerParts controller = new ControllerWiring(brief.kit(), drawing).draw(FeedFuses.of(brief.kit(), plan));
        AddedParts added = new AddedWiring(factory, drawing).draw(plan);
        return end(drawing, factory, Optional.of(controller), added);
    }

    /** The node of a terminal of an added part; a vehicle of which no wire or part reaches it has no such node. */
    public static Node terminal(AddedPartId part, String terminal) {
        return AddedWiring.node(part, terminal);
    }

    private static Drawing begin(Corner corner, Celsius warmth) {
        Drawing drawing = new Drawing(new FigureBook(corner), warmth);
        double restVolts = SupplyPoint.REST.volts().value();
        drawing.add(new Battery(BATTERY, Places.POST, Node.CHASSIS, restVolts, POST_OHMS), Phrase.of("origin.battery"));
        return drawing;
    }

    private static Wired end(
            Drawing drawing, FactoryParts factory, Optional<ControllerParts> controller, AddedParts added) {
        return new Wired(
                drawing.network(),
                BATTERY,
                factory,
                controller,
                added,
                drawing.switches,
                drawing.origins,
                drawing.figures.ranged(),
                drawing.warmth());
    }
}
