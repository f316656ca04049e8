package org.loomproof.workshop.prover.explore;

import java.util.SortedMap;
import org.loomproof.network.netlist.PartFault;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Part;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.Situation;

/**
 * Stock and fitted vehicle solved in the same situation.
 *
 * @param positions of everything that matters here; what is not named is at rest
 * @param supply volts at the battery, or the next supply point below them
 * @param supplyVolts volts at the battery
 * @param doing what stands for all that the controller may be doing to the same effect
 * @param stock the vehicle as it came
 * @param fitted the vehicle with the plan carried out
 * @param working what the stock loads get when they work
 * @param bench where a further network may be solved
 */
public record Pair(
        SortedMap<OperableId, String> positions,
        SupplyPoint supply,
        double supplyVolts,
        Condition.Doing doing,
        Reading stock,
        Reading fitted,
        Working working,
        Workbench bench) {

    /** Whether the operable is at the position. */
    public boolean isAt(OperableId operable, String position) {
        return position.equals(positions.get(operable));
    }

    /** The situation that stands for all to the same effect. */
    public Situation situation() {
        return doing.with(positions, supply);
    }

    /**
     * What sets the fitted vehicle with something changed in it as it is set here: the same volts, and what has opened by now open.
     */
    public Setting settingOf(Vehicle changed) {
        Setting setting = changed.settings().of(situation()).emf(changed.wired().battery(), supplyVolts);
        for (Part part : fitted.wired().network().parts()) {
            if (fitted.point().setting().fault(part.id()) == PartFault.BROKEN
                    && changed.wired().network().findPart(part.id()).isPresent()) {
                setting = setting.broken(part.id());
            }
        }
        return setting;
    }

    /** The same with the fitted vehicle at another point. */
    Pair with(Reading other) {
        return new Pair(positions, supply, supplyVolts, doing, stock, other, working, bench);
    }
}
