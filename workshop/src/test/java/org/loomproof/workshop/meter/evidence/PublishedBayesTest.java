package org.loomproof.workshop.meter.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.meter.role.WireModels;
import org.loomproof.workshop.meter.role.WireRole;

/** Published examples of Bayes' rule, carried by our own beliefs: each hypothesis takes the place of a role. */
class PublishedBayesTest {

    private static final Offset<Double> PRINTED = Offset.offset(1e-6);
    private final Fleet fleet = new Fleet(WireModels.usual());

    /** A belief in which each role has that weight in all, whatever the number of its drawn wires. */
    private Belief prior(ToDoubleFunction<WireRole> weight) {
        double[] weights = new double[fleet.size()];
        for (int i = 0; i < weights.length; i++) {
            WireRole role = fleet.role(i);
            long alike = java.util.stream.IntStream.range(0, weights.length)
                    .filter(k -> fleet.role(k) == role)
                    .count();
            weights[i] = weight.applyAsDouble(role) / alike;
        }
        return Belief.of(fleet, weights);
    }

    private double[] likelihood(ToDoubleFunction<WireRole> of) {
        double[] all = new double[fleet.size()];
        Arrays.setAll(all, i -> of.applyAsDouble(fleet.role(i)));
        return all;
    }

    /** Eddy 1982, as Gigerenzer tells it in natural frequencies: 1 % ill, 80 % found, 9.6 % false alarms. */
    @Test
    void screeningProblem() {
        Belief belief = prior(role -> role == WireRole.HORN ? 0.01 : role == WireRole.LOCK ? 0.99 : 0);
        double[] positive = likelihood(role -> role == WireRole.HORN ? 0.8 : 0.096);
        Belief once = belief.after(positive);
        assertThat(once.chance(WireRole.HORN)).isEqualTo(0.07764, Offset.offset(5e-6));
        // Two independent tests by the odds form.
        assertThat(once.after(positive).chance(WireRole.HORN)).isEqualTo(0.412269, PRINTED);
    }

    /** Russell and Norvig, Artificial Intelligence, figure 14.2: a burglary, an earthquake, an alarm, and two who call. */
    @Test
    void burglaryNetwork() {
        List<WireRole> worlds = Arrays.asList(WireRole.values()).subList(0, 8);
        Belief prior = prior(role -> {
            int world = worlds.indexOf(role);
            return world < 0 ? 0 : probability(world);
        });
        Belief called = prior.after(likelihood(role -> called(worlds.indexOf(role), 0.9, 0.05)))
                .after(likelihood(role -> called(worlds.indexOf(role), 0.7, 0.01)));
        assertThat(sum(called, worlds, 1)).isEqualTo(0.28417184, PRINTED);
        assertThat(sum(called, worlds, 2)).isEqualTo(0.17606684, PRINTED);
        assertThat(sum(called, worlds, 4)).isEqualTo(0.76069204, PRINTED);
    }

    /** Bit 1: burglary, bit 2: earthquake, bit 4: alarm. */
    private static double probability(int world) {
        boolean burglary = (world & 1) > 0;
        boolean earthquake = (world & 2) > 0;
        double alarm = burglary ? (earthquake ? 0.95 : 0.94) : (earthquake ? 0.29 : 0.001);
        return (burglary ? 0.001 : 0.999) * (earthquake ? 0.002 : 0.998) * ((world & 4) > 0 ? alarm : 1 - alarm);
    }

    private static double called(int world, double withAlarm, double without) {
        return world >= 0 && (world & 4) > 0 ? withAlarm : without;
    }

    private static double sum(Belief belief, List<WireRole> worlds, int bit) {
        double sum = 0;
        for (int world = 0; world < worlds.size(); world++) {
            sum += (world & bit) > 0 ? belief.chance(worlds.get(world)) : 0;
        }
        return sum;
    }
}
