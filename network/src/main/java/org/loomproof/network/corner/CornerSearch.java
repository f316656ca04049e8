package org.loomproof.network.corner;

import java.util.List;
import java.util.SplittableRandom;
import org.loomproof.network.corner.WorstCase.Method;
import org.loomproof.network.law.PartEquations;
import org.loomproof.network.law.Term;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Part;
import org.loomproof.network.solve.Solver;
import org.loomproof.network.solve.SolverOptions;

/**
 * The least and the greatest of a voltage or current while several quantities lie anywhere in their ranges.
 *
 * <p>Why vertices are enough where they are: with straight parts the equations are linear, and a change of one resistance is
 * a change of rank one, so any voltage or current is a ratio of two first-degree polynomials in it whose lower one does not
 * vanish for positive resistances; in a source it is a first-degree polynomial. Either is monotone. From any point of the box
 * one quantity after the other may therefore be moved to one of its ends without lowering the answer, and the way ends at a
 * vertex. The drives of thresholds are voltages too, so contacts that stand alike and rest at all vertices rest so at every
 * point between.
 *
 * <p>A power is no such reading: it is greatest where a load's resistance passes that of its source. Products are enclosed by
 * intervals, see {@link Enclosure}; all else is looked for with a fixed seed, and no bound is claimed.
 */
public final class CornerSearch {
    /** 4,096 vertices; beyond that they are drawn. */
    private static final int MOST_ENUMERATED = 12;

    private static final int DRAWN = 500;
    private static final long SEED = 20_260_101;

    /** Climbing ends below this part of a range. */
    private static final double LEAST_MOVE = 1e-3;

    private final Network network;
    private final Solver solver;

    /** A search over one network; it keeps a solver of its own, so it is not for sharing between threads. */
    public CornerSearch(Network network) {
        this.network = network;
        this.solver = Solver.of(network, SolverOptions.USUAL.withoutOtherStablePoints());
    }

    /** Searches after power-up at each point. */
    public WorstCase search(Setting setting, List<Uncertain> quantities, Asked asked) {
        Looking looking = new Looking(network, solver, setting, quantities, asked);
        boolean enumerated = quantities.size() <= MOST_ENUMERATED;
        SplittableRandom random = new SplittableRandom(SEED);
        for (int vertex = 0; vertex < (enumerated ? 1 << quantities.size() : DRAWN); vertex++) {
            double[] place = new double[quantities.size()];
            for (int k = 0; k < place.length; k++) {
                place[k] = enumerated ? vertex >> k & 1 : random.nextInt(2);
            }
            looking.look(place);
        }
        boolean monotone = enumerated
                && looking.contactsAlike()
                && quantities.stream().allMatch(Uncertain::oneElement)
                && network.parts().stream().allMatch(CornerSearch::isStraight);
        if (monotone && asked instanceof Asked.Linear) {
            return looking.result(
                    Method.PROVEN_AT_VERTICES,
                    new WorstCase.Bounds(
                            looking.least().value(), looking.greatest().value()));
        }
        if (monotone && asked instanceof Asked.Product product) {
            WorstCase.Bounds bounds = new Enclosure(looking, product, quantities.size()).search();
            return looking.result(Method.ENCLOSED_BY_INTERVALS, bounds);
        }
        for (int k = 0; k < DRAWN; k++) {
            looking.look(random.doubles(quantities.size()).toArray());
        }
        climb(looking, true);
        climb(looking, false);
        return looking.result(enumerated ? Method.VERTICES_AND_DRAWN : Method.DRAWN, WorstCase.Bounds.NONE);
    }

    /** From the worst met, one quantity after the other a little up and down, ever less. */
    private static void climb(Looking looking, boolean greatest) {
        for (double move = 0.25; move > LEAST_MOVE && !looking.failed(); move *= 0.5) {
            double[] begun = looking.place(greatest);
            for (int k = 0; k < begun.length; k++) {
                for (double direction : new double[] {-move, move}) {
                    double[] place = looking.place(greatest).clone();
                    place[k] = Math.clamp(place[k] + direction, 0, 1);
                    looking.look(place);
                }
            }
        }
    }

    private static boolean isStraight(Part part) {
        return PartEquations.of(part).terms().stream()
                .noneMatch(term ->
                        term instanceof Term.Junction || term instanceof Term.Filament || term instanceof Term.Channel);
    }
}
