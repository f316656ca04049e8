package org.loomproof.workshop.prover.explore;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.part.Fuse;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Switch;

/**
 * Which way round current runs through what several loads may share: the fuses and the contacts that hands and doors work. By
 * the sign of the amps into a part's first pin, over all readings of the stock vehicle.
 */
public final class Ways {

    private final Map<PartId, Double> most = new HashMap<>();
    private final Map<PartId, Double> least = new HashMap<>();
    private final Map<Network, List<PartId>> shared = new HashMap<>();

    /** The fuses and contacts of a network, in its order. */
    public static List<PartId> shared(Network network) {
        return network.parts().stream()
                .filter(part -> part instanceof Switch || part instanceof Fuse)
                .map(Part::id)
                .toList();
    }

    void add(Reading stock) {
        for (PartId part : shared.computeIfAbsent(stock.wired().network(), Ways::shared)) {
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
