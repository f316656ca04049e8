package org.loomproof.workshop.wiring;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomproof.network.part.Node;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.sheet.Sheet;

/**
 * The places where factory wires meet, as nodes. Places that stand next to each other in a path are one node. A circuit's
 * wire that is cut has two: what a path lists before the wire meets the one, what it lists after meets the other.
 */
final class Places {

    /** The battery's plus post. */
    static final Node POST = new Node("battery plus");

    private final Set<CircuitId> cut;
    private final Map<Node, Node> joined = new HashMap<>();

    Places(Sheet sheet, Set<CircuitId> cut) {
        this.cut = new HashSet<>(cut);
        for (Circuit circuit : sheet.circuits()) {
            circuit.paths().forEach(path -> joinNeighbours(circuit.id(), path));
        }
    }

    private void joinNeighbours(CircuitId circuit, List<PathStep> path) {
        for (int k = 1; k < path.size(); k++) {
            if (isPlace(path.get(k - 1)) && isPlace(path.get(k))) {
                join(leaving(circuit, path.get(k - 1)), arriving(circuit, path.get(k)));
            }
        }
    }

    static boolean isPlace(PathStep step) {
        return !(step instanceof PathStep.Part);
    }

    /** The node at which a path arrives when it comes to the place. */
    Node arriving(CircuitId circuit, PathStep place) {
        return root(place instanceof PathStep.Here ? before(circuit) : elsewhere(place));
    }

    /** The node from which a path goes on behind the place. */
    Node leaving(CircuitId circuit, PathStep place) {
        return root(place instanceof PathStep.Here ? after(circuit) : elsewhere(place));
    }

    /** The circuit's wire on the side of what its path lists before it. */
    Node before(CircuitId circuit) {
        return root(new Node("circuit " + circuit));
    }

    /** The circuit's wire on the side of what its path lists after it. */
    Node after(CircuitId circuit) {
        return cut.contains(circuit) ? root(new Node("circuit " + circuit + " after the cut")) : before(circuit);
    }

    private static Node elsewhere(PathStep place) {
        return switch (place) {
            case PathStep.Supply supply -> POST;
            case PathStep.Ground ground -> Node.CHASSIS;
            case PathStep.Point point -> new Node("point " + point.id());
            case PathStep.Here here -> throw new IllegalArgumentException("a wire belongs to its circuit");
            case PathStep.Part part -> throw new IllegalArgumentException(part.id() + " is a part, not a place");
        };
    }

    private Node root(Node node) {
        Node at = node;
        for (Node next = joined.get(at); next != null; next = joined.get(at)) {
            at = next;
        }
        return at;
    }

    /** Posts win over points, so that a place joined to the body is the body. */
    private void join(Node one, Node other) {
        Node a = root(one);
        Node b = root(other);
        if (!a.equals(b)) {
            boolean keepA = a.equals(Node.CHASSIS) || (a.equals(POST) && !b.equals(Node.CHASSIS));
            joined.put(keepA ? b : a, keepA ? a : b);
        }
    }
}
