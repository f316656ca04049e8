package org.loomproof.workshop.prover.damage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.explore.Workbench;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Reach;

/** Loads that the car as it came turns both ways, by one thing moved from rest: those whose direction a person sees. */
final class Turning {

    private final Vehicle stock;
    private final Workbench bench = new Workbench();
    private final Map<ElementId, Sign.Turns.At> forwards = new LinkedHashMap<>();
    private final Map<ElementId, Sign.Turns.At> backwards = new LinkedHashMap<>();

    private Turning(Brief brief) {
        this.stock = Vehicle.stock(brief, Corner.TYPICAL);
        Setting rest = stock.settings()
                .atRest(SupplyPoint.REST, Condition.IDLE.state(), Condition.IDLE.feed(), Condition.IDLE.moment());
        for (Operable operable : brief.sheet().operables()) {
            for (String position : operable.positions()) {
                Setting moved = stock.settings().moved(rest, operable.id(), position);
                bench.settled(stock.wired(), moved)
                        .ifPresent(point -> take(point, new Sign.Turns.At(operable.id(), position)));
            }
        }
    }

    private void take(OperatingPoint point, Sign.Turns.At by) {
        double works = Signs.WORKS_SHARE * SupplyPoint.REST.volts().value();
        stock.wired().factory().loads().forEach((load, reach) -> {
            double volts = point.volts(reach.from(), reach.to());
            if (Math.abs(volts) >= works) {
                (volts > 0 ? forwards : backwards).putIfAbsent(load, by);
            }
        });
    }

    /** A sign for each of them, in the sheet's order. */
    static List<Sign.Turns> list(Brief brief) {
        Turning turning = new Turning(brief);
        List<Sign.Turns> signs = new ArrayList<>();
        for (Map.Entry<ElementId, Reach> load :
                turning.stock.wired().factory().loads().entrySet()) {
            Optional<Sign.Turns.At> forwards = Optional.ofNullable(turning.forwards.get(load.getKey()));
            Optional<Sign.Turns.At> backwards = Optional.ofNullable(turning.backwards.get(load.getKey()));
            if (forwards.isPresent() && backwards.isPresent()) {
                signs.add(new Sign.Turns(
                        load.getKey(),
                        turning.stock.wired().words(load.getValue().part()),
                        forwards.get(),
                        backwards.get()));
            }
        }
        return signs;
    }
}
