package org.loomproof.workshop.wiring;

import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.trade.supply.SupplyPoint;

/**
 * One setting of everything that is set from outside, and what the controller is doing.
 *
 * @param positions the position of each operable; one that is missing is at rest
 * @param supply volts at the battery
 * @param controller what the controller would do if it lives; it is without supply when its feed is not whole
 * @param feed whether the controller gets its supply and ground
 * @param moment whether pulses and flashes of that doing are on
 * @param still outputs that are on besides, their pulse not being over
 */
public record Situation(
        SortedMap<OperableId, String> positions,
        SupplyPoint supply,
        ControllerState controller,
        ControllerFeed feed,
        Moment moment,
        Set<LeadId> still) {

    public Situation {
        positions = Collections.unmodifiableSortedMap(new TreeMap<>(positions));
        still = Collections.unmodifiableSet(new TreeSet<>(still));
    }

    /** The situation with no pulse left over. */
    public Situation(
            SortedMap<OperableId, String> positions,
            SupplyPoint supply,
            ControllerState controller,
            ControllerFeed feed,
            Moment moment) {
        this(positions, supply, controller, feed, moment, Set.of());
    }

    /** The situation with pulses and flashes on. */
    public Situation(
            SortedMap<OperableId, String> positions,
            SupplyPoint supply,
            ControllerState controller,
            ControllerFeed feed) {
        this(positions, supply, controller, feed, Moment.ACTING);
    }

    /** The same with one operable moved. */
    public Situation with(OperableId operable, String position) {
        Map<OperableId, String> moved = new TreeMap<>(positions);
        moved.put(operable, position);
        return new Situation(new TreeMap<>(moved), supply, controller, feed, moment, still);
    }

    /** The same with the controller doing what it does there; its feed stays. */
    public Situation doing(Situation other) {
        return new Situation(positions, supply, other.controller, feed, other.moment, other.still);
    }

    /** The same with another feed. */
    public Situation fedBy(ControllerFeed other) {
        return new Situation(positions, supply, controller, other, moment, still);
    }

    /** The same with other volts at the battery. */
    public Situation suppliedBy(SupplyPoint other) {
        return new Situation(positions, other, controller, feed, moment, still);
    }
}
