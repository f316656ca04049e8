package org.loomproof.workshop.wiring;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.ElementId;

/**
 * Where the things of the sheet are in the network. All maps keep the sheet's order.
 *
 * @param loads what does work: lamps, loads and relay coils
 * @param inputs factory inputs
 * @param contacts the contacts of relays
 * @param before the node of each circuit's wire, on the side of what its path lists before it
 * @param after the node on the other side; the same node unless the wire is cut
 */
public record FactoryParts(
        Map<ElementId, Reach> loads,
        Map<ElementId, InputReach> inputs,
        List<PartId> contacts,
        Map<CircuitId, Node> before,
        Map<CircuitId, Node> after) {

    public FactoryParts {
        loads = Collections.unmodifiableMap(new LinkedHashMap<>(loads));
        inputs = Collections.unmodifiableMap(new LinkedHashMap<>(inputs));
        contacts = List.copyOf(contacts);
        before = Collections.unmodifiableMap(new LinkedHashMap<>(before));
        after = Collections.unmodifiableMap(new LinkedHashMap<>(after));
    }
}
