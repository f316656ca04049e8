package org.loomproof.workshop.prover.explore;

import java.util.HashMap;
import java.util.Map;
import java.util.Map.Entry;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.Reach;

/** What each load of the stock vehicle gets when it works: the most in any position, at each supply point. */
public final class Working {

    private record At(SupplyPoint supply, ElementId load) {}

    private final Map<At, Double> amps = new HashMap<>();
    private final Map<At, Double> volts = new HashMap<>();

    /** Takes one more reading of the stock vehicle into account. */
    void add(SupplyPoint supply, Reading stock) {
        for (Entry<ElementId, Reach> load : stock.wired().factory().loads().entrySet()) {
            Reach reach = load.getValue();
            if (stock.wired().network().findPart(reach.part()).isPresent()) {
                At at = new At(supply, load.getKey());
                amps.merge(at, Math.abs(stock.amps(reach)), Math::max);
                volts.merge(at, Math.abs(stock.volts(reach)), Math::max);
            }
        }
    }

    /** The most amps through the load at that supply point. */
    public double amps(SupplyPoint supply, ElementId load) {
        return amps.getOrDefault(new At(supply, load), 0.0);
    }

    /** The most volts across the load at that supply point. */
    public double volts(SupplyPoint supply, ElementId load) {
        return volts.getOrDefault(new At(supply, load), 0.0);
    }
}
