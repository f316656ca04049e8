package org.loomproof.workshop.plan;

/** The plan's name for one added part, such as K1. */
public record AddedPartId(String value) implements Comparable<AddedPartId> {

    public AddedPartId {
        if (value.isBlank()) {
            throw new IllegalArgumentException("an id needs a name");
        }
    }

    @Override
    public int compareTo(AddedPartId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
