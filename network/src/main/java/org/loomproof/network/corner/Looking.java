package org.loomproof.network.corner;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.network.corner.WorstCase.Extreme;
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

/** One search under way: solves points of the box and keeps the least and the greatest met. */
final class Looking {
    private final Network network;
    private final Solver solver;
    private final Setting setting;
    private final List<Uncertain> quantities;
    private final Asked asked;
    private Optional<List<Boolean>> contacts = Optional.empty();
    private boolean contactsAlike = true;
    private Optional<WorstCase> failure = Optional.empty();
    private Extreme least = new Extreme(Double.POSITIVE_INFINITY, Map.of());
    private Extreme greatest = new Extreme(Double.NEGATIVE_INFINITY, Map.of());
    private double[] leastPlace = new double[0];
    private double[] greatestPlace = new double[0];
    private int points;

    Looking(Network network, Solver solver, Setting setting, List<Uncertain> quantities, Asked asked) {
        this.network = network;
        this.solver = solver;
        this.setting = setting;
        this.quantities = quantities;
        this.asked = asked;
    }

    /**
     * Solves a point.
     *
     * @param place where on its range each quantity lies, 0 to 1
     * @return nothing once some point could not be settled
     */
    Optional<OperatingPoint> look(double[] place) {
        if (failure.isPresent()) {
            return Optional.empty();
        }
        Map<String, Double> at = new LinkedHashMap<>();
        Setting moved = setting;
        for (int k = 0; k < quantities.size(); k++) {
            Uncertain each = quantities.get(k);
            double value = each.low() * (1 - place[k]) + each.high() * place[k];
            moved = each.change().apply(moved, value);
            at.put(each.name(), value);
        }
        points++;
        SolveOutcome outcome = solver.solve(moved);
        if (!(outcome instanceof SolveOutcome.Settled settled)) {
            failure = Optional.of(new WorstCase.NoPoint(at, outcome));
            return Optional.empty();
        }
        List<Boolean> here = positions(settled.point());
        contactsAlike &= contacts.map(here::equals).orElse(true);
        contacts = Optional.of(here);
        double value = asked.at(settled.point());
        if (value < least.value()) {
            least = new Extreme(value, at);
            leastPlace = place.clone();
        }
        if (value > greatest.value()) {
            greatest = new Extreme(value, at);
            greatestPlace = place.clone();
        }
        return Optional.of(settled.point());
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

    boolean failed() {
        return failure.isPresent();
    }

    boolean contactsAlike() {
        return contactsAlike;
    }

    Extreme least() {
        return least;
    }

    Extreme greatest() {
        return greatest;
    }

    /** Where the least or the greatest was met; each from 0 to 1. */
    double[] place(boolean ofGreatest) {
        return ofGreatest ? greatestPlace : leastPlace;
    }

    int points() {
        return points;
    }

    WorstCase result(WorstCase.Method method, WorstCase.Bounds bounds) {
        return failure.orElseGet(() -> new WorstCase.Between(least, greatest, bounds, method, points));
    }
}
