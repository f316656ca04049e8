package org.loomproof.workshop.prover.explore;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map.Entry;
import java.util.Objects;
import java.util.Set;
import java.util.SortedMap;
import org.loomproof.network.netlist.Setting;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.state.Space;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.wiring.VehicleWiring;

/** Finds what lies behind a wire, by taking the wire away: loads that worked in some position and no longer do. */
public final class CutLoads {

    /** A load that keeps less than this share of its current has stopped. */
    private static final double STOPPED_SHARE = 0.05;

    private CutLoads() {}

    /** The loads behind the wires of these circuits, in the sheet's order. */
    public static List<ElementId> list(Brief brief, Vehicle stock, Set<CircuitId> circuits) {
        if (circuits.isEmpty()) {
            return List.of();
        }
        Vehicle cut = Vehicle.of(VehicleWiring.cutOpen(brief.sheet(), circuits, Corner.TYPICAL), brief);
        Set<ElementId> stopped = new LinkedHashSet<>();
        for (Area area : Area.list(stock.wired(), cut.wired())) {
            if (area.touched()) {
                stopped.addAll(stopped(brief, area, stock.restrictedTo(area), cut.restrictedTo(area)));
            }
        }
        return stock.wired().factory().loads().keySet().stream()
                .filter(stopped::contains)
                .toList();
    }

    private static List<ElementId> stopped(Brief brief, Area area, Vehicle whole, Vehicle cut) {
        Space space = Space.of(
                brief.sheet(), List.<Condition>of(), area.parts(), whole.wired().switches(), List.of());
        Walker wholeAt = walker(space, whole);
        Walker cutAt = walker(space, cut);
        Workbench bench = new Workbench();
        Working working = new Working(brief.sheet());
        List<Stop> stops = new ArrayList<>();
        for (int p = 0; p < space.positions().size(); p++) {
            SortedMap<OperableId, String> positions = space.positions().get(p);
            Setting wholeSetting = wholeAt.at(p);
            Setting cutSetting = cutAt.at(p);
            bench.settled(whole.wired(), wholeSetting)
                    .ifPresent(before -> bench.settled(cut.wired(), cutSetting).ifPresent(after -> {
                        working.add(SupplyPoint.REST, positions, new Reading(whole, before));
                        stops.addAll(compare(new Reading(whole, before), new Reading(cut, after)));
                    }));
        }
        return stops.stream()
                .filter(stop -> stop.amps() > STOPPED_SHARE * working.amps(SupplyPoint.REST, stop.load()))
                .map(Stop::load)
                .distinct()
                .toList();
    }

    private record Stop(ElementId load, double amps) {}

    private static List<Stop> compare(Reading before, Reading after) {
        List<Stop> stops = new ArrayList<>();
        for (Entry<ElementId, Reach> load : before.wired().factory().loads().entrySet()) {
            Reach reach = load.getValue();
            if (before.wired().network().findPart(reach.part()).isPresent()) {
                double amps = Math.abs(before.amps(reach));
                Reach same =
                        Objects.requireNonNull(after.wired().factory().loads().get(load.getKey()));
                if (Math.abs(after.amps(same)) < STOPPED_SHARE * amps) {
                    stops.add(new Stop(load.getKey(), amps));
                }
            }
        }
        return stops;
    }

    private static Walker walker(Space space, Vehicle vehicle) {
        return new Walker(space, vehicle.settings(), SupplyPoint.REST, Condition.IDLE);
    }
}
