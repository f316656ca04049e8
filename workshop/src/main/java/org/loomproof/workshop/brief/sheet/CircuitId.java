package org.loomproof.workshop.brief.sheet;

/** The sheet's own name for one factory circuit. */
public record CircuitId(String value) implements Comparable<CircuitId> {

    public CircuitId {
        if (value.isBlank()) {
            throw new IllegalArgumentException("an id needs a name");
        }
    }

    @Override
    public int compareTo(CircuitId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
