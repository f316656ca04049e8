package org.loomproof.network.solve;

import java.util.Arrays;

/** A growing array of ints. */
final class IntList {
    private int[] values = new int[4];
    private int size;

    void add(int value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, 2 * size);
        }
        values[size++] = value;
    }

    void addAll(int[] more) {
        for (int value : more) {
            add(value);
        }
    }

    void setLast(int value) {
        values[size - 1] = value;
    }

    int size() {
        return size;
    }

    int[] toArray() {
        return Arrays.copyOf(values, size);
    }
}
