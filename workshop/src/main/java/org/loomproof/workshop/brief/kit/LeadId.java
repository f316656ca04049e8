package org.loomproof.workshop.brief.kit;

/** The name of one lead of the kit. */
public record LeadId(String value) implements Comparable<LeadId> {

    public LeadId {
        if (value.isBlank()) {
            throw new IllegalArgumentException("an id needs a name");
        }
    }

    @Override
    public int compareTo(LeadId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
