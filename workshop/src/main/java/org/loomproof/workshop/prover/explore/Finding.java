package org.loomproof.workshop.prover.explore;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What a sweep has found for one case so far. */
public final class Finding {

    /** Slacks closer than this, in volts, amps or per cent, are one and the same: no meter tells them apart. */
    private static final double GRAIN = 1e-4;

    /** A situation with the slack found there and the steps that lead to it. */
    public record Found(Key key, double slack, int steps) {

        /** Of situations that are alike the one with the fewest steps is told: the rest of what is set there matters nothing. */
        boolean isWorseThan(Found other) {
            double here = Math.rint(slack / GRAIN);
            double there = Math.rint(other.slack / GRAIN);
            return here < there || (here == there && isSoonerThan(other));
        }

        boolean isSoonerThan(Found other) {
            return steps < other.steps || (steps == other.steps && key.compareTo(other.key) < 0);
        }
    }

    /** A situation without a point of rest. */
    record Unsettled(Key key, int steps, Answers trouble, boolean inStock) {}

    private @Nullable Found worst;
    private @Nullable Found soonestBroken;
    private @Nullable Unsettled unsettled;
    private Between.@Nullable Place between;
    private long situations;

    /** Takes in the slack of one more situation. */
    public void add(Found found) {
        situations++;
        if (worst == null || found.isWorseThan(worst)) {
            worst = found;
        }
        if (found.slack() < 0 && (soonestBroken == null || found.isSoonerThan(soonestBroken))) {
            soonestBroken = found;
        }
    }

    void add(Unsettled trouble) {
        if (unsettled == null || trouble.steps() < unsettled.steps()) {
            unsettled = trouble;
        }
    }

    void add(Between.Place place) {
        if (between == null || place.found().isWorseThan(between.found())) {
            between = place;
        }
    }

    /** Takes in what another strip of the same sweep has found. */
    void merge(Finding other) {
        long counted = situations + other.situations;
        Optional.ofNullable(other.worst).ifPresent(this::add);
        Optional.ofNullable(other.soonestBroken).ifPresent(this::add);
        Optional.ofNullable(other.unsettled).ifPresent(this::add);
        Optional.ofNullable(other.between).ifPresent(this::add);
        situations = counted;
    }

    /** The least slack, when there was any situation it speaks of. */
    public Optional<Found> worst() {
        return Optional.ofNullable(worst);
    }

    /** The broken situation that takes the fewest steps, then the first in order. */
    public Optional<Found> soonestBroken() {
        return Optional.ofNullable(soonestBroken);
    }

    /** The situation without a point of rest that takes the fewest steps. */
    Optional<Unsettled> unsettled() {
        return Optional.ofNullable(unsettled);
    }

    /** The least slack between supply points, where contacts move there. */
    public Optional<Between.Place> between() {
        return Optional.ofNullable(between);
    }

    /** How many situations it spoke of. */
    long situations() {
        return situations;
    }
}
