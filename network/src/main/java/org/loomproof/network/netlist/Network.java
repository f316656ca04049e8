package org.loomproof.network.netlist;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Pin;

/**
 * Parts joined at nodes. Immutable, equal only to itself; parts keep the order in which they were added, nodes the order in which they first
 * appear, chassis first. Any thread may share it.
 */
public final class Network {
    private final List<Part> parts;
    private final List<Node> nodes;
    private final Map<PartId, Integer> partIndex = new HashMap<>();
    private final Map<Node, Integer> nodeIndex = new LinkedHashMap<>();

    Network(List<Part> parts) {
        this.parts = List.copyOf(parts);
        nodeIndex.put(Node.CHASSIS, 0);
        for (Part part : this.parts) {
            partIndex.put(part.id(), partIndex.size());
            for (Pin pin : part.pins()) {
                nodeIndex.putIfAbsent(pin.node(), nodeIndex.size());
            }
        }
        this.nodes = List.copyOf(nodeIndex.keySet());
    }

    /** Collects the parts of a network. */
    public static NetworkBuilder builder() {
        return new NetworkBuilder();
    }

    /** All parts, in the order in which they were added. */
    public List<Part> parts() {
        return parts;
    }

    /** All nodes, chassis first. */
    public List<Node> nodes() {
        return nodes;
    }

    /**
     * The part of this name.
     *
     * @throws IllegalArgumentException if there is none
     */
    public Part part(PartId id) {
        return parts.get(indexOf(id));
    }

    /** The part of this name, if there is one. */
    public Optional<Part> findPart(PartId id) {
        return Optional.ofNullable(partIndex.get(id)).map(parts::get);
    }

    /** Whether some part has a pin there; the chassis always counts. */
    public boolean hasNode(Node node) {
        return nodeIndex.containsKey(node);
    }

    /**
     * The part's place in {@link #parts()}.
     *
     * @throws IllegalArgumentException if there is no such part
     */
    public int indexOf(PartId id) {
        Integer index = partIndex.get(id);
        if (index == null) {
            throw new IllegalArgumentException("the network has no part " + id);
        }
        return index;
    }

    /**
     * The node's place in {@link #nodes()}.
     *
     * @throws IllegalArgumentException if there is no such node
     */
    public int indexOf(Node node) {
        Integer index = nodeIndex.get(node);
        if (index == null) {
            throw new IllegalArgumentException("the network has no node " + node);
        }
        return index;
    }

    /** All switches open, outputs off, batteries at their own voltage, relays free, nothing broken. */
    public Setting atRest() {
        return Setting.atRest(this);
    }
}
