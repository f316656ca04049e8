package org.loomproof.workshop.brief.sheet;

/** The name of one factory part: a fuse, a switch, a lamp, a load. */
public record ElementId(String value) implements Comparable<ElementId> {

    public ElementId {
        if (value.isBlank()) {
            throw new IllegalArgumentException("an id needs a name");
        }
    }

    @Override
    public int compareTo(ElementId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
