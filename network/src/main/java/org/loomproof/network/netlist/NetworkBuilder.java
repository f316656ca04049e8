package org.loomproof.network.netlist;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;

/** Collects parts; {@link #build()} tells all mistakes at once. */
public final class NetworkBuilder {
    private final List<Part> parts = new ArrayList<>();

    NetworkBuilder() {}

    /** Adds a part; mistakes are told by {@link #build()}. */
    public NetworkBuilder add(Part part) {
        parts.add(part);
        return this;
    }

    /** Adds parts in their order. */
    public NetworkBuilder addAll(Iterable<? extends Part> more) {
        more.forEach(parts::add);
        return this;
    }

    /**
     * The network of all parts added so far.
     *
     * @throws IllegalArgumentException naming every mistake: two parts of one name, a network that never meets the chassis
     */
    public Network build() {
        List<String> mistakes = new ArrayList<>();
        Map<PartId, Part> seen = new HashMap<>();
        for (Part part : parts) {
            Part earlier = seen.putIfAbsent(part.id(), part);
            if (earlier != null) {
                mistakes.add("two parts are named " + part.id() + ": " + earlier + " and " + part);
            }
        }
        boolean meetsChassis = parts.stream()
                .flatMap(part -> part.pins().stream())
                .anyMatch(pin -> pin.node().equals(Node.CHASSIS));
        if (!parts.isEmpty() && !meetsChassis) {
            mistakes.add("no part is joined to " + Node.CHASSIS + ", so no voltage has a reference");
        }
        if (!mistakes.isEmpty()) {
            throw new IllegalArgumentException(String.join("; ", mistakes));
        }
        return new Network(parts);
    }
}
