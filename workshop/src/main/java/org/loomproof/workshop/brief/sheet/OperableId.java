package org.loomproof.workshop.brief.sheet;

/** The name of something a person operates: the key, an opening, a switch. */
public record OperableId(String value) implements Comparable<OperableId> {

    public OperableId {
        if (value.isBlank()) {
            throw new IllegalArgumentException("an id needs a name");
        }
    }

    @Override
    public int compareTo(OperableId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
