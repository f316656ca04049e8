package org.loomproof.workshop.wiring;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.WireId;

/**
 * Where the things of the plan are in the network. All maps keep the plan's order.
 *
 * @param parts each added part; of a relay the coil
 * @param wires each added wire
 * @param switches what is closed unless a situation says otherwise: added fuses
 */
public record AddedParts(Map<AddedPartId, Reach> parts, Map<WireId, Reach> wires, List<PartId> switches) {

    public AddedParts {
        parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
        wires = Collections.unmodifiableMap(new LinkedHashMap<>(wires));
        switches = List.copyOf(switches);
    }
}
