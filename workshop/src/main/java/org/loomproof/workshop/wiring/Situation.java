package org.loomproof.workshop.wiring;

import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.trade.supply.SupplyPoint;

/**
 * One setting of everything that is set from outside, and what the controller is doing.
 *
 * @param positions the position of each operable; one that is missing is at rest
 * @param supply volts at the battery
 * @param controller what the controller would do if it lives; it is without supply when its feed is not whole
 * @param feed whether the controller gets its supply and ground
 */
public record Situation(
        SortedMap<OperableId, String> positions, SupplyPoint supply, ControllerState controller, ControllerFeed feed) {

    public Situation {
        positions = java.util.Collections.unmodifiableSortedMap(new TreeMap<>(positions));
    }

    /** The same with one operable moved. */
    public Situation with(OperableId operable, String position) {
        Map<OperableId, String> moved = new TreeMap<>(positions);
        moved.put(operable, position);
        return new Situation(new TreeMap<>(moved), supply, controller, feed);
    }
}
