package org.loomproof.network.part;

/**
 * A point of the network where pins meet. Two nodes with the same name are the same node.
 *
 * @param name any text but the empty one
 */
public record Node(String name) implements Comparable<Node> {
    /** The reference of all voltages: 0 V by definition. */
    public static final Node CHASSIS = new Node("chassis");

    public Node {
        Require.named(name, "node");
    }

    @Override
    public int compareTo(Node other) {
        return name.compareTo(other.name);
    }

    @Override
    public String toString() {
        return name;
    }
}
