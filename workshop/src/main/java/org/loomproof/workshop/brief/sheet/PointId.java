package org.loomproof.workshop.brief.sheet;

/** The name of a place where factory circuits are joined. */
public record PointId(String value) implements Comparable<PointId> {

    public PointId {
        if (value.isBlank()) {
            throw new IllegalArgumentException("an id needs a name");
        }
    }

    @Override
    public int compareTo(PointId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
