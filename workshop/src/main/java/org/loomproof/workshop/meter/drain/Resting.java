package org.loomproof.workshop.meter.drain;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.meter.evidence.Bell;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.standby.Standby;

/**
 * What the sleeping car draws by its sheet and its plan, as a distribution on a grid.
 *
 * @param levels likely currents in amps with their weights, which sum to 1
 * @param lowAmps nineteen in twenty are above
 * @param typicalAmps by typical values
 * @param highAmps nineteen in twenty are below
 */
record Resting(List<Level> levels, double lowAmps, double typicalAmps, double highAmps) {

    /** However sure the sheet is, one car of a kind differs so much from the next. Common practice, no published source. */
    private static final double LEAST_SPREAD = 0.15;

    private static final double NINETEEN_IN_TWENTY = 1.645;
    private static final double GRID = 0.25;
    private static final double FURTHEST = 3;

    record Level(double amps, double weight) {}

    /** By the sheet's sleep current and what the plan adds while armed. */
    static Resting of(Brief brief, Plan plan) {
        Figure<Amps> car = brief.sheet().vehicle().sleepCurrent();
        Figure<Amps> kit = brief.kit().standby();
        double other = Standby.added(brief, plan, ControllerState.ARMED).value()
                - kit.typical().value();
        List<Level> levels = new ArrayList<>();
        double sum = 0;
        for (double z = -FURTHEST; z <= FURTHEST; z += GRID) {
            for (double y = -FURTHEST; y <= FURTHEST; y += 4 * GRID) {
                double weight = Bell.density(z, 0, 1) * Bell.density(y, 0, 1);
                levels.add(new Level(at(car, z) + at(kit, y) + other, weight));
                sum += weight;
            }
        }
        double all = sum;
        List<Level> shared = levels.stream()
                .map(level -> new Level(level.amps(), level.weight() / all))
                .toList();
        return new Resting(
                shared,
                at(car, -NINETEEN_IN_TWENTY) + at(kit, -NINETEEN_IN_TWENTY) + other,
                at(car, 0) + at(kit, 0) + other,
                at(car, NINETEEN_IN_TWENTY) + at(kit, NINETEEN_IN_TWENTY) + other);
    }

    /** So many standard deviations from the typical value, in logarithms; the range of a figure holds nine in ten. */
    private static double at(Figure<Amps> figure, double z) {
        double typical = figure.typical().value() + Plateaus.NOTHING_AMPS;
        double end = (z < 0 ? figure.low() : figure.high()).value() + Plateaus.NOTHING_AMPS;
        double spread = Math.max(LEAST_SPREAD, Math.abs(Math.log(end / typical)) / NINETEEN_IN_TWENTY);
        return Math.max(0, typical * Math.exp(z * spread) - Plateaus.NOTHING_AMPS);
    }

    /** The mean of a function of the level. */
    double mean(DoubleUnaryOperator of) {
        return levels.stream()
                .mapToDouble(level -> level.weight() * of.applyAsDouble(level.amps()))
                .sum();
    }
}
