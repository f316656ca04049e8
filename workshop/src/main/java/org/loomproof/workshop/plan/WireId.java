package org.loomproof.workshop.plan;

/** The plan's name for one added wire, such as W3. */
public record WireId(String value) implements Comparable<WireId> {

    public WireId {
        if (value.isBlank()) {
            throw new IllegalArgumentException("an id needs a name");
        }
    }

    @Override
    public int compareTo(WireId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
