package org.loomproof.workshop.meter.evidence;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomproof.workshop.meter.reading.Reading;
import org.loomproof.workshop.meter.role.WireRole;

/** How much is believed of each drawn wire: weights that sum to one. */
public final class Belief {

    private final Fleet fleet;
    private final double[] weights;
    private final Map<WireRole, Double> chances = new EnumMap<>(WireRole.class);

    private Belief(Fleet fleet, double[] weights) {
        this.fleet = fleet;
        this.weights = weights;
        for (WireRole role : WireRole.values()) {
            chances.put(role, 0.0);
        }
        for (int i = 0; i < weights.length; i++) {
            chances.merge(fleet.role(i), weights[i], Double::sum);
        }
    }

    /** A belief of these weights, which need not sum to one yet. */
    static Belief of(Fleet fleet, double[] weights) {
        double sum = 0;
        for (double each : weights) {
            sum += each;
        }
        if (!(sum > 0) || Double.isInfinite(sum)) {
            throw new IllegalArgumentException("weights must have a sum: " + sum);
        }
        double[] shares = new double[weights.length];
        for (int i = 0; i < weights.length; i++) {
            shares[i] = weights[i] / sum;
        }
        return new Belief(fleet, shares);
    }

    /** Bayes' rule: the belief after something of this likelihood was seen. */
    public Belief after(double[] likelihood) {
        double[] product = new double[weights.length];
        double most = 0;
        for (int i = 0; i < weights.length; i++) {
            product[i] = weights[i] * likelihood[i];
            most = Math.max(most, product[i]);
        }
        // Far out in every tail at once nothing is left to share: then nothing was learned.
        return most < Double.MIN_NORMAL ? this : of(fleet, product);
    }

    /** The belief after readings, one after the other. */
    public Belief afterReadings(List<Reading> readings) {
        Belief belief = this;
        List<Reading> earlier = new ArrayList<>();
        for (Reading reading : readings) {
            belief = belief.after(fleet.likelihood(reading, earlier));
            earlier.add(reading);
        }
        return belief;
    }

    /** The same with another probability of one role, the others keeping their shares of the rest. */
    public Belief withChance(WireRole role, double chance) {
        double before = chance(role);
        if (before <= 0 || before >= 1 || before == chance) {
            return this;
        }
        double[] moved = new double[weights.length];
        for (int i = 0; i < weights.length; i++) {
            moved[i] = weights[i] * (fleet.role(i) == role ? chance / before : (1 - chance) / (1 - before));
        }
        return of(fleet, moved);
    }

    /** The belief were it known to be one of these roles, each alike likely as far as it is still possible. */
    public Belief among(Set<WireRole> roles) {
        double[] kept = new double[weights.length];
        for (int i = 0; i < weights.length; i++) {
            double chance = chance(fleet.role(i));
            if (roles.contains(fleet.role(i)) && chance > 0) {
                kept[i] = weights[i] / chance;
            }
        }
        return of(fleet, kept);
    }

    /** The wires the belief is about. */
    public Fleet fleet() {
        return fleet;
    }

    /** How much is believed of one drawn wire. */
    public double weight(int at) {
        return weights[at];
    }

    /** The probability of a role. */
    public double chance(WireRole role) {
        return chances.getOrDefault(role, 0.0);
    }

    /** The probability of every role. */
    public Map<WireRole, Double> chances() {
        return Collections.unmodifiableMap(chances);
    }

    /** The most likely role, the first of equals. */
    public WireRole best() {
        WireRole best = WireRole.NONE_OF_THESE;
        for (WireRole role : WireRole.values()) {
            best = chance(role) > chance(best) ? role : best;
        }
        return best;
    }
}
