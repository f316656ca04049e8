package org.loomproof.network.corner;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import org.loomproof.network.corner.WorstCase.Extreme;
import org.loomproof.network.corner.WorstCase.Method;
import org.loomproof.network.law.PartEquations;
import org.loomproof.network.law.Term;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.HighSideOutput;
import org.loomproof.network.part.LowSideOutput;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.RelayPosition;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.network.solve.SolveOutcome;
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
 */
public final class CornerSearch {
    /** 4,096 vertices; beyond that they are drawn. */
    private static final int MOST_ENUMERATED = 12;

    private static final int DRAWN = 500;
    private static final long SEED = 20_260_101;

    private final Network network;
    private final Solver solver;

    public CornerSearch(Network network) {
        this.network = network;
        this.solver = Solver.of(network, SolverOptions.USUAL.withoutOtherStablePoints());
    }

    /**
     * Searches after power-up at each point.
     *
     * @param asked what is read from a point, a voltage or a current
     */
    public WorstCase search(Setting setting, List<Uncertain> quantities, ToDoubleFunction<OperatingPoint> asked) {
        Search search = new Search(setting, quantities, asked);
        boolean enumerated = quantities.size() <= MOST_ENUMERATED;
        SplittableRandom random = new SplittableRandom(SEED);
        if (enumerated) {
            for (int vertex = 0; vertex < 1 << quantities.size(); vertex++) {
                int bits = vertex;
                search.look(k -> bits >> k & 1);
            }
        } else {
            for (int k = 0; k < DRAWN; k++) {
                search.look(quantity -> random.nextInt(2));
            }
        }
        boolean proven = enumerated
                && search.contactsAlike
                && quantities.stream().allMatch(Uncertain::oneElement)
                && network.parts().stream().allMatch(CornerSearch::isStraight);
        if (!proven) {
            for (int k = 0; k < DRAWN; k++) {
                search.look(quantity -> random.nextDouble());
            }
        }
        Method method = proven ? Method.PROVEN_AT_VERTICES : enumerated ? Method.VERTICES_AND_DRAWN : Method.DRAWN;
        return search.result(method);
    }

    private static boolean isStraight(Part part) {
        return PartEquations.of(part).terms().stream()
                .noneMatch(term ->
                        term instanceof Term.Junction || term instanceof Term.Filament || term instanceof Term.Channel);
    }

    /** Where on its range, 0 to 1, each quantity lies. */
    private interface Place {
        double of(int quantity);
    }

    private final class Search {
        private final Setting setting;
        private final List<Uncertain> quantities;
        private final ToDoubleFunction<OperatingPoint> asked;
        private Optional<List<Boolean>> contacts = Optional.empty();
        private boolean contactsAlike = true;
        private Optional<WorstCase> failure = Optional.empty();
        private Extreme least = new Extreme(Double.POSITIVE_INFINITY, Map.of());
        private Extreme greatest = new Extreme(Double.NEGATIVE_INFINITY, Map.of());
        private int points;

        Search(Setting setting, List<Uncertain> quantities, ToDoubleFunction<OperatingPoint> asked) {
            this.setting = setting;
            this.quantities = quantities;
            this.asked = asked;
        }

        void look(Place place) {
            if (failure.isPresent()) {
                return;
            }
            Map<String, Double> at = new LinkedHashMap<>();
            Setting moved = setting;
            for (int k = 0; k < quantities.size(); k++) {
                Uncertain each = quantities.get(k);
                double share = place.of(k);
                double value = each.low() * (1 - share) + each.high() * share;
                moved = each.change().apply(moved, value);
                at.put(each.name(), value);
            }
            points++;
            SolveOutcome outcome = solver.solve(moved);
            if (!(outcome instanceof SolveOutcome.Settled settled)) {
                failure = Optional.of(new WorstCase.NoPoint(at, outcome));
                return;
            }
            List<Boolean> here = positions(settled.point());
            contactsAlike &= contacts.map(here::equals).orElse(true);
            contacts = Optional.of(here);
            double value = asked.applyAsDouble(settled.point());
            if (value < least.value()) {
                least = new Extreme(value, at);
            }
            if (value > greatest.value()) {
                greatest = new Extreme(value, at);
            }
        }

        WorstCase result(Method method) {
            return failure.orElseGet(() -> new WorstCase.Between(least, greatest, method, points));
        }
    }

    private List<Boolean> positions(OperatingPoint point) {
        List<Boolean> positions = new ArrayList<>();
        for (Part part : network.parts()) {
            if (part instanceof Relay) {
                positions.add(point.relayPosition(part.id()) == RelayPosition.PULLED_IN);
            } else if (part instanceof LowSideOutput || part instanceof HighSideOutput) {
                positions.add(point.isAwake(part.id()));
            }
        }
        return positions;
    }
}
