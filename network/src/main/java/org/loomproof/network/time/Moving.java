package org.loomproof.network.time;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.loomproof.network.law.Term;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PulsedSource;
import org.loomproof.network.solve.CompanionSolver;

/** The branches that do not carry the same i = g v + j for as long as nothing is switched. */
final class Moving {
    final CompanionSolver layout;
    private final int[] branches;
    private final int[] index;

    Moving(CompanionSolver layout) {
        this.layout = layout;
        branches = IntStream.range(0, layout.branchCount())
                .filter(b -> moves(layout, b))
                .toArray();
        index = new int[layout.branchCount()];
        Arrays.fill(index, -1);
        for (int k = 0; k < branches.length; k++) {
            index[branches[k]] = k;
        }
    }

    private static boolean moves(CompanionSolver layout, int branch) {
        return switch (layout.term(branch)) {
            case Term.Coil c -> true;
            case Term.Capacitance c -> true;
            case Term.Filament f -> true;
            case Term.Junction j -> true;
            case Term.Channel c -> true;
            case Term.Throw t -> false;
            case Term.Conductance c -> {
                Part part = layout.network().parts().get(layout.partOf(branch));
                yield part instanceof Battery || part instanceof PulsedSource;
            }
        };
    }

    /** The place of a branch among those that move, or -1. */
    int indexOf(int branch) {
        return index[branch];
    }

    int count() {
        return branches.length;
    }

    /** Writes their currents as last found. */
    void takeAmps(double[] amps) {
        for (int k = 0; k < branches.length; k++) {
            amps[k] = layout.branchAmps(branches[k]);
        }
    }
}
