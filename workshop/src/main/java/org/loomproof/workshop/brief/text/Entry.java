package org.loomproof.workshop.brief.text;

import java.util.List;

/** One entry of a file and where it starts. */
sealed interface Entry {

    /** Where it starts. */
    Spot at();

    /** How many entries it holds, itself included, with each alias counted as what it stands for. */
    int size();

    /** Line and column, from 1. */
    record Spot(int line, int column) implements Comparable<Spot> {
        @Override
        public int compareTo(Spot other) {
            return line != other.line ? Integer.compare(line, other.line) : Integer.compare(column, other.column);
        }
    }

    /**
     * A single value.
     *
     * @param plain written without quotes
     */
    record Scalar(Spot at, String text, boolean plain) implements Entry {
        @Override
        public int size() {
            return 1;
        }

        /** True for nothing, {@code ~} and {@code null}: the key is there, the value is not said. */
        boolean isNotSaid() {
            return plain && (text.isEmpty() || "~".equals(text) || "null".equals(text));
        }
    }

    /** Entries in a row. */
    record Listing(Spot at, List<Entry> items, int size) implements Entry {
        public Listing {
            items = List.copyOf(items);
        }
    }

    /** Entries by key, in the order of the text; each key once. */
    record Mapping(Spot at, List<Pair> pairs, int size) implements Entry {
        public Mapping {
            pairs = List.copyOf(pairs);
        }
    }

    /** A key and what stands behind it. */
    record Pair(Scalar key, Entry value) {}
}
