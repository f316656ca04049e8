package org.loomproof.workshop.prover.damage;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.workshop.prover.explore.Beside;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Concern;
import org.loomproof.workshop.prover.explore.Key;
import org.loomproof.workshop.prover.explore.Workbench;
import org.loomproof.workshop.prover.state.StepsTo;

/** How far inside its limit each case is as planned, in each situation somebody asks about: worked out once, for all damages. */
final class PlannedSlacks {

    private final WholeWalk whole;
    private final List<Case> cases;
    private final Map<String, Integer> places = new HashMap<>();
    private final Concern concern;
    private final Map<Key, double[]> known = new HashMap<>();
    private final Workbench bench = new Workbench();

    /** @param cases those of the plan that lie in the walk's area */
    PlannedSlacks(WholeWalk whole, StepsTo stepsTo, List<Case> cases) {
        this.whole = whole;
        this.cases = List.copyOf(cases);
        this.concern = new Concern(whole.space, stepsTo, this.cases);
        for (int c = 0; c < cases.size(); c++) {
            places.put(cases.get(c).id(), c);
        }
    }

    /** The slack of a case there; NaN where it says nothing, or is none of these. */
    synchronized double slack(String caseId, Key key) {
        Integer place = places.get(caseId);
        if (place == null) {
            return Double.NaN;
        }
        return known.computeIfAbsent(key, this::worked)[place];
    }

    private double[] worked(Key key) {
        double[] slacks = new double[cases.size()];
        Arrays.fill(slacks, Double.NaN);
        new Beside(whole.space, key, whole.stock, whole.fitted, whole.stockTable.working(), bench)
                .pairsAtRest(
                        whole.stockTable.at(key.supply(), key.positions()),
                        bench.answers(whole.fitted, whole.fitted.settings().of(whole.situation(key))))
                .ifPresent(pairs -> {
                    for (int c : concern.at(concern.under(key.condition()), key.positions())) {
                        slacks[c] = Beside.slack(cases.get(c), pairs);
                    }
                });
        return slacks;
    }

    /** Operating points asked for so far: once a situation, whoever asks first. */
    synchronized long solves() {
        return bench.solves();
    }
}
