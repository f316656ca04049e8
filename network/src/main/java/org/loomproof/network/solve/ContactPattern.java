package org.loomproof.network.solve;

import java.util.Arrays;
import java.util.function.IntPredicate;

/** Which thresholds are passed: the positions of all relays and the wakefulness of all outputs. A value. */
final class ContactPattern {
    private final boolean[] passed;

    private ContactPattern(boolean[] passed) {
        this.passed = passed;
    }

    static ContactPattern of(int count, IntPredicate isPassed) {
        boolean[] passed = new boolean[count];
        for (int t = 0; t < count; t++) {
            passed[t] = isPassed.test(t);
        }
        return new ContactPattern(passed);
    }

    /** The pattern in which each threshold is passed or not as told; this one itself if that is so. */
    ContactPattern with(IntPredicate isPassed) {
        for (int t = 0; t < passed.length; t++) {
            if (passed[t] != isPassed.test(t)) {
                return of(passed.length, isPassed);
            }
        }
        return this;
    }

    int count() {
        return passed.length;
    }

    boolean isPassed(int threshold) {
        return passed[threshold];
    }

    ContactPattern withMoved(int threshold) {
        boolean[] moved = passed.clone();
        moved[threshold] = !moved[threshold];
        return new ContactPattern(moved);
    }

    /** The first threshold from {@code from} on that differs, or -1. */
    int findDifference(ContactPattern other, int from) {
        int at = Arrays.mismatch(passed, from, passed.length, other.passed, from, passed.length);
        return at < 0 ? -1 : from + at;
    }

    @Override
    public boolean equals(Object object) {
        return object instanceof ContactPattern other && Arrays.equals(passed, other.passed);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(passed);
    }
}
