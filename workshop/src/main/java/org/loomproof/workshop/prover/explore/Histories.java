package org.loomproof.workshop.prover.explore;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.HighSideOutput;
import org.loomproof.network.part.LowSideOutput;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.RelayPosition;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.trade.supply.SupplyPoint;

/**
 * What a vehicle may have been before: contacts that stay where they were find other points of rest than they do from
 * power-up.
 *
 * @param relays all relays
 * @param outputs one output that tells whether its controller was awake, which goes for all; none without a controller
 * @param together with all relays pulled in and the controller awake
 * @param single with one relay pulled in at a time, where there are several
 */
record Histories(
        List<PartId> relays, List<PartId> outputs, List<OperatingPoint> together, List<OperatingPoint> single) {

    Histories {
        relays = List.copyOf(relays);
        outputs = List.copyOf(outputs);
        together = List.copyOf(together);
        single = List.copyOf(single);
    }

    static Histories of(Vehicle vehicle, Workbench bench) {
        List<PartId> relays = list(vehicle, Relay.class);
        List<PartId> outputs = new ArrayList<>(list(vehicle, LowSideOutput.class));
        outputs.addAll(list(vehicle, HighSideOutput.class));
        List<OperatingPoint> together = new ArrayList<>();
        List<OperatingPoint> single = new ArrayList<>();
        if (!relays.isEmpty() || !outputs.isEmpty()) {
            Setting awake = vehicle.settings()
                    .atRest(SupplyPoint.HIGH, Condition.IDLE.state(), Condition.IDLE.feed(), Condition.IDLE.moment());
            bench.settled(vehicle.wired(), held(awake, relays)).ifPresent(together::add);
            for (PartId relay : relays.size() > 1 ? relays : List.<PartId>of()) {
                bench.settled(vehicle.wired(), held(awake, List.of(relay))).ifPresent(single::add);
            }
        }
        return new Histories(relays, outputs.stream().limit(1).toList(), together, single);
    }

    private static Setting held(Setting base, List<PartId> relays) {
        Setting setting = base;
        for (PartId relay : relays) {
            setting = setting.contactHeld(relay, RelayPosition.PULLED_IN);
        }
        return setting;
    }

    private static List<PartId> list(Vehicle vehicle, Class<? extends Part> kind) {
        return vehicle.wired().network().parts().stream()
                .filter(kind::isInstance)
                .map(Part::id)
                .toList();
    }

    /** Adds the point unless one with the same contact positions is there. */
    void addNew(OperatingPoint point, List<OperatingPoint> points) {
        if (points.stream().noneMatch(known -> isSame(known, point))) {
            points.add(point);
        }
    }

    /** How contacts stand at these points of rest, as one number; never zero. */
    long stand(List<OperatingPoint> points) {
        long all = 1;
        for (OperatingPoint point : points) {
            long here = 1;
            for (PartId output : outputs) {
                here = 2 * here + (point.isAwake(output) ? 1 : 0);
            }
            for (PartId relay : relays) {
                here = 2 * here + (point.relayPosition(relay) == RelayPosition.PULLED_IN ? 1 : 0);
            }
            all = 1_000_003 * all + here;
        }
        return all == 0 ? 1 : all;
    }

    private boolean isSame(OperatingPoint one, OperatingPoint other) {
        for (PartId output : outputs) {
            if (one.isAwake(output) != other.isAwake(output)) {
                return false;
            }
        }
        for (PartId relay : relays) {
            if (one.relayPosition(relay) != other.relayPosition(relay)) {
                return false;
            }
        }
        return true;
    }
}
