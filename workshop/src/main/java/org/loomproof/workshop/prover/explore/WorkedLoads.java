package org.loomproof.workshop.prover.explore;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.loomproof.network.part.Node;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.state.Space;
import org.loomproof.workshop.trade.supply.SupplyPoint;

/** The loads that a circuit's own switches work in the stock vehicle, with a charged battery. */
public final class WorkedLoads {

    /** A load works when it gets more than this share of the battery's volts. */
    public static final double LEAST_SHARE = 0.1;

    private WorkedLoads() {}

    /** Those loads, in the sheet's order. */
    public static List<ElementId> list(Brief brief, Vehicle stock, CircuitId circuit) {
        return among(brief, stock, circuit, stock.wired().factory().loads().keySet(), Working::isWorkedBy);
    }

    /** The inputs to which the circuit's own switches give a level, in the sheet's order. */
    public static List<ElementId> listInputs(Brief brief, Vehicle stock, CircuitId circuit) {
        return among(brief, stock, circuit, stock.wired().factory().inputs().keySet(), Working::isLevelOf);
    }

    private interface Test {
        boolean passes(Working working, CircuitId circuit, ElementId element, SupplyPoint supply);
    }

    private static List<ElementId> among(
            Brief brief, Vehicle stock, CircuitId circuit, Set<ElementId> elements, Test test) {
        Set<ElementId> worked = new LinkedHashSet<>();
        for (Area area : Area.list(stock.wired(), stock.wired())) {
            Vehicle part = stock.restrictedTo(area);
            Node wire = part.wired().factory().before().get(circuit);
            if (wire != null && part.wired().network().hasNode(wire)) {
                Space space = Space.of(
                        brief.sheet(),
                        List.<Condition>of(),
                        area.parts(),
                        stock.wired().switches(),
                        List.of());
                Working working = StockTable.at(space, part, brief.sheet(), SupplyPoint.REST);
                elements.stream()
                        .filter(element -> test.passes(working, circuit, element, SupplyPoint.REST))
                        .forEach(worked::add);
            }
        }
        return List.copyOf(worked);
    }
}
