package org.loomproof.workshop.prover.explore;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.part.Fuse;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Switch;
import org.loomproof.workshop.wiring.Wired;

/**
 * Which way round current runs through what several loads may share: fuses, the contacts that hands and doors work, and those of
 * relays. By the sign of the amps into a part's first pin, over all readings of the stock vehicle.
 */
public final class Ways {

    private final Map<PartId, Double> most = new HashMap<>();
    private final Map<PartId, Double> least = new HashMap<>();
    private final Map<Network, List<PartId>> shared = new HashMap<>();

    Ways() {}

    /** As far as another has come. */
    Ways(Ways known) {
        most.putAll(known.most);
        least.putAll(known.least);
    }

    /** The fuses and contacts of a vehicle, in the order of its network. */
    public static List<PartId> shared(Wired wired) {
        Set<PartId> contacts = Set.copyOf(wired.factory().contacts());
        return wired.network().parts().stream()
                .filter(part -> part instanceof Switch || part instanceof Fuse || contacts.contains(part.id()))
                .map(Part::id)
                .toList();
    }

    void add(Reading stock) {
        for (PartId part : shared.computeIfAbsent(stock.wired().network(), network -> shared(stock.wired()))) {
            double amps = stock.point().amps(part);
            most.merge(part, amps, Math::max);
            least.merge(part, amps, Math::min);
        }
    }

    /** The most amps that the part carries into its first pin; never under zero. */
    double forwards(PartId part) {
        return Math.max(0, most.getOrDefault(part, 0.0));
    }

    /** The most amps that it carries out of its first pin; never under zero. */
    double backwards(PartId part) {
        return Math.max(0, -least.getOrDefault(part, 0.0));
    }
}
