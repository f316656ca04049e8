package org.loomproof.network.part;

/**
 * The name of one part, unique within its network.
 *
 * @param name any text but the empty one
 */
public record PartId(String name) implements Comparable<PartId> {
    public PartId {
        Require.named(name, "part");
    }

    @Override
    public int compareTo(PartId other) {
        return name.compareTo(other.name);
    }

    @Override
    public String toString() {
        return name;
    }
}
