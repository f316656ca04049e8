package org.loomproof.network.solve;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.loomproof.network.law.Term;

/**
 * For each curved branch, the few others near it whose being on or off decides what it carries: found by walking from its ends
 * over branches that may conduct well, never past the chassis or a bus. Immutable, made once a network.
 */
final class Neighbourhoods {
    /** Branches that a curve's state is told by. */
    static final int NEAREST = 6;

    /** A node of more branches than this is held by so many that one of them matters little: a bus. */
    private static final int BUS_BRANCHES = 7;

    /** A branch of less than this cannot light, block or wake anything: 10 kΩ. */
    private static final double WORTH_SIEMENS = 0.9e-4;

    /** Curves that look at each branch, and the bit by which it is told, the nearest highest. */
    private final int[][] watchers;

    private final int[][] bits;

    Neighbourhoods(Layout layout) {
        int[] curves = layout.curved;
        int[][] touching = layout.touching(b -> isWorthIt(layout.terms[b]));
        List<List<int[]>> found = IntStream.range(0, layout.branchCount)
                .mapToObj(b -> (List<int[]>) new ArrayList<int[]>())
                .toList();
        for (int k = 0; k < curves.length; k++) {
            int bit = 1 << NEAREST;
            for (int near : nearest(layout, touching, curves[k])) {
                bit >>= 1;
                found.get(near).add(new int[] {k, bit});
            }
        }
        watchers = new int[layout.branchCount][];
        bits = new int[layout.branchCount][];
        for (int b = 0; b < layout.branchCount; b++) {
            watchers[b] = found.get(b).stream().mapToInt(pair -> pair[0]).toArray();
            bits[b] = found.get(b).stream().mapToInt(pair -> pair[1]).toArray();
        }
    }

    int[] watchers(int branch) {
        return watchers[branch];
    }

    int[] bits(int branch) {
        return bits[branch];
    }

    private static boolean isWorthIt(Term term) {
        return switch (term) {
            case Term.Conductance c -> c.siemens() > WORTH_SIEMENS;
            case Term.Throw t -> t.siemens() > WORTH_SIEMENS;
            case Term.Coil c -> c.ohms() * WORTH_SIEMENS < 1;
            case Term.Capacitance c -> false;
            case Term.Channel c -> true;
            case Term.Junction j -> false;
            case Term.Filament f -> true;
        };
    }

    private static List<Integer> nearest(Layout layout, int[][] touching, int curve) {
        List<Integer> nearest = new ArrayList<>();
        Set<Integer> metBranches = new HashSet<>(Set.of(curve));
        Set<Integer> metRanks = new HashSet<>();
        List<Integer> border = new ArrayList<>(List.of(layout.from[curve], layout.to[curve]));
        for (int at = 0; at < border.size() && nearest.size() < NEAREST; at++) {
            int rank = border.get(at);
            int[] branches = touching[rank];
            if (rank == layout.rankCount || branches.length > BUS_BRANCHES || !metRanks.add(rank)) {
                continue;
            }
            for (int b : branches) {
                if (metBranches.add(b) && nearest.size() < NEAREST) {
                    nearest.add(b);
                    border.add(layout.otherEnd(b, rank));
                }
            }
        }
        return nearest;
    }
}
