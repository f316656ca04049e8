package org.loomproof.network.solve;

import java.util.Arrays;
import org.loomproof.network.law.ShockleyCurve;
import org.loomproof.network.law.Term;
import org.loomproof.network.law.When;

/**
 * The most current that can flow from one rank to the chassis while each branch carries no more than it carries at a stated
 * voltage: a maximum flow, by shortest ways level by level (Dinic, Soviet Mathematics Doklady 11, 1970; from memory). Contacts
 * are at rest; of switches, controllers and selectors each position counts that carries most.
 */
final class DownhillFlow {
    private final Layout layout;
    private final int[][] touching;
    private final int source;

    /** What each branch may carry more, from its first end to its second and back. */
    private final double[] forth;

    private final double[] back;
    private double amps;

    /** Branches from the source to each rank at least; -1 for one out of reach or found to lead nowhere. */
    private final int[] level;

    /** Of the branches that touch each rank, the next to try. */
    private final int[] next;

    /** Ranks met, level by level; then the branches of the way in hand. */
    private final int[] list;

    /**
     * Nothing flows yet.
     *
     * @param touching per rank the branches that touch it
     * @param source where the current comes from
     * @param volts the highest voltage there is
     * @param without a branch that is left out: the source's own
     */
    DownhillFlow(Layout layout, int[][] touching, int source, double volts, int without) {
        this(layout, touching, source, new double[layout.branchCount], new double[layout.branchCount], 0);
        for (int b = 0; b < layout.branchCount; b++) {
            if (b != without && mayCarry(layout.terms[b]) && layout.terms[b].when() != When.NEVER) {
                forth[b] = mostAmps(layout.terms[b], volts);
                back[b] = mostAmps(layout.terms[b], -volts);
            }
        }
    }

    private DownhillFlow(Layout layout, int[][] touching, int source, double[] forth, double[] back, double amps) {
        this.layout = layout;
        this.touching = touching;
        this.source = source;
        this.forth = forth;
        this.back = back;
        this.amps = amps;
        level = new int[layout.rankCount + 1];
        next = new int[layout.rankCount + 1];
        list = new int[layout.rankCount + 1];
    }

    /** Whether a term may carry current while contacts are at rest, in its own right or as the place of a short. */
    static boolean mayCarry(Term term) {
        return term.when() != When.PASSED && term.when() != When.SET_AND_PASSED;
    }

    /** The same flow, to be raised further in a network in which one branch may carry any current. */
    DownhillFlow withShort(int branch) {
        DownhillFlow other = new DownhillFlow(layout, touching, source, forth.clone(), back.clone(), amps);
        other.forth[branch] = Double.POSITIVE_INFINITY;
        other.back[branch] = Double.POSITIVE_INFINITY;
        return other;
    }

    /** The most amps that can flow, if that is no more than a bound; else something above the bound. */
    double raise(double bound) {
        while (amps <= bound && findLevels()) {
            Arrays.fill(next, 0);
            for (int length = findWay(); length > 0 && amps <= bound; length = findWay()) {
                fill(length);
            }
        }
        return amps;
    }

    /** Whether there is still a way to the chassis. */
    private boolean findLevels() {
        Arrays.fill(level, -1);
        level[source] = 0;
        int count = 0;
        list[count++] = source;
        for (int m = 0; m < count && level[layout.chassisRank()] < 0; m++) {
            int at = list[m];
            for (int b : touching[at]) {
                int other = layout.otherEnd(b, at);
                if (level[other] < 0 && room(b, at) > 0) {
                    level[other] = level[at] + 1;
                    list[count++] = other;
                }
            }
        }
        return level[layout.chassisRank()] >= 0;
    }

    /** Puts a way of one branch a level together; how long it is, 0 if there is none left. */
    private int findWay() {
        int length = 0;
        int at = source;
        while (at != layout.chassisRank()) {
            if (next[at] < touching[at].length) {
                int b = touching[at][next[at]];
                int other = layout.otherEnd(b, at);
                if (level[other] == level[at] + 1 && room(b, at) > 0) {
                    list[length++] = b;
                    at = other;
                } else {
                    next[at]++;
                }
            } else if (length == 0) {
                return 0;
            } else {
                level[at] = -1;
                at = layout.otherEnd(list[--length], at);
            }
        }
        return length;
    }

    private void fill(int length) {
        double most = Double.POSITIVE_INFINITY;
        int at = source;
        for (int k = 0; k < length; k++) {
            most = Math.min(most, room(list[k], at));
            at = layout.otherEnd(list[k], at);
        }
        amps += most;
        at = source;
        for (int k = 0; k < length && most < Double.POSITIVE_INFINITY; k++) {
            int b = list[k];
            forth[b] += layout.from[b] == at ? -most : most;
            back[b] += layout.from[b] == at ? most : -most;
            at = layout.otherEnd(b, at);
        }
    }

    private double room(int branch, int end) {
        return layout.from[branch] == end ? forth[branch] : back[branch];
    }

    /** The most current a term carries in the direction of a voltage, from none up to that. */
    private static double mostAmps(Term term, double volts) {
        double size = Math.abs(volts);
        return switch (term) {
            case Term.Conductance c -> size * c.siemens();
            case Term.Throw t -> size * t.siemens();
            case Term.Coil c -> size / c.ohms();
            case Term.Capacitance c -> 0;
            case Term.Junction j ->
                volts > 0 ? Double.POSITIVE_INFINITY : j.curve().saturationAmps() + size * ShockleyCurve.LEAK_SIEMENS;
            case Term.Filament f -> f.curve().amps(size);
            case Term.Channel c -> Math.abs(c.curve().amps(volts));
        };
    }
}
