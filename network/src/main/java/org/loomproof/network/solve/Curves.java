package org.loomproof.network.solve;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** All curved branches of a network, by kind, and the way from a branch to its curve. */
final class Curves {
    final List<CurvedBranches> kinds;
    private final @Nullable CurvedBranches[] kindOf;
    private final int[] placeOf;
    private final JunctionBranches junctions;
    private final FilamentBranches filaments;
    private final ChannelBranches channels;

    Curves(Layout layout) {
        junctions = new JunctionBranches(layout);
        filaments = new FilamentBranches(layout);
        channels = new ChannelBranches(layout);
        kinds = List.of(junctions, filaments, channels);
        kindOf = new CurvedBranches[layout.branchCount];
        placeOf = new int[layout.branchCount];
        for (CurvedBranches kind : kinds) {
            for (int k = 0; k < kind.count; k++) {
                kindOf[kind.branch[k]] = kind;
                placeOf[kind.branch[k]] = k;
            }
        }
    }

    /** Moves every tangent that misses its curve; how many were moved. */
    int bend(double[] volts, Factorisation factorisation) {
        return junctions.bend(volts, factorisation)
                + filaments.bend(volts, factorisation)
                + channels.bend(volts, factorisation);
    }

    void strictness(double strictness) {
        kinds.forEach(kind -> kind.strictness = strictness);
    }

    /** The kind of a curved branch; null for a straight one. */
    @Nullable
    CurvedBranches kindOf(int branch) {
        return kindOf[branch];
    }

    int placeOf(int branch) {
        return placeOf[branch];
    }
}
