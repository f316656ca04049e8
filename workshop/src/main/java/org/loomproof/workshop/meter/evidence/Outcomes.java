package org.loomproof.workshop.meter.evidence;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.loomproof.network.part.Meter;
import org.loomproof.workshop.meter.reading.Step;
import org.loomproof.workshop.meter.role.Shows;
import org.loomproof.workshop.meter.role.WireModel;
import org.loomproof.workshop.meter.role.WireRole;

/**
 * What a test may show, in classes a technician would tell apart, and the share of each on every drawn wire: what a likelihood
 * is to a reading, this is to a reading that has not been taken yet.
 */
public final class Outcomes {

    private static final double LEAST_VOLTS = -0.75;
    private static final double CLASS_VOLTS = 0.5;
    private static final int VOLT_CLASSES = 32;
    private static final int MOVING = VOLT_CLASSES;
    private static final int FLOATING = VOLT_CLASSES + 1;
    private static final double[] RMS_EDGES = {0.1, 0.25, 0.5, 1, 2, 4, 8};
    private static final double LEAST_DECADE = -1;
    private static final double CLASS_DECADES = 0.5;
    private static final int OHM_CLASSES = 17;

    /** A typical meter's spread on what a typical wire shows. */
    private static final double USUAL_SPREAD = 0.15;

    /** Drawn wires believed less than this add nothing that shows. */
    private static final double LEAST_WEIGHT = 1e-7;

    private final int classes;
    private final float[] shares;

    private Outcomes(int wires, int classes) {
        this.classes = classes;
        this.shares = new float[wires * classes];
    }

    /** Volts, in the direct range. */
    public static Outcomes volts(Fleet fleet, Step step) {
        Outcomes outcomes = new Outcomes(fleet.size(), VOLT_CLASSES + 2);
        boolean cranks = step.key() == Step.KeyAt.CRANKING;
        double spread = cranks ? 0.5 : USUAL_SPREAD;
        outcomes.each(fleet, step, (shows, volts, at) -> {
            if (shows.floats()) {
                double steady = Likelihood.steadyGhost(volts);
                outcomes.spreadVolts(at, volts, Math.hypot(spread, Likelihood.ghost(volts)), steady);
                outcomes.add(at, MOVING, 0.55 * (1 - steady));
                outcomes.add(at, FLOATING, 0.45 * (1 - steady));
            } else if (shows.pulses()) {
                outcomes.spreadVolts(at, volts, Math.hypot(spread, 0.15 * shows.swing()), 0.7);
                outcomes.add(at, MOVING, 0.28);
                outcomes.add(at, FLOATING, 0.02);
            } else {
                outcomes.spreadVolts(at, volts, spread, cranks ? 0.84 : 0.98);
                outcomes.add(at, MOVING, cranks ? 0.15 : 0.015);
                outcomes.add(at, FLOATING, 0.005);
            }
        });
        int last = fleet.size() - 1;
        outcomes.spreadVolts(last, 0, 0.2, 0.27);
        outcomes.spreadVolts(last, 12.3, 0.4, 0.27);
        for (int k = 0; k < VOLT_CLASSES; k++) {
            outcomes.add(last, k, 0.28 / VOLT_CLASSES);
        }
        outcomes.add(last, MOVING, 0.12);
        outcomes.add(last, FLOATING, 0.06);
        outcomes.mingle();
        return outcomes;
    }

    /** Volts, in the alternating range. */
    public static Outcomes alternating(Fleet fleet, Step step) {
        Outcomes outcomes = new Outcomes(fleet.size(), RMS_EDGES.length + 1);
        outcomes.each(fleet, step, (shows, volts, at) -> {
            double rms = 0.45 * shows.swing();
            double loose = shows.floats() ? 0.6 : 0.08 + 0.4 * rms;
            double below = 0;
            double none = Bell.below(0, rms, loose);
            for (int k = 0; k < RMS_EDGES.length; k++) {
                double to = (Bell.below(RMS_EDGES[k], rms, loose) - none) / (1 - none);
                outcomes.add(at, k, to - below);
                below = to;
            }
            outcomes.add(at, RMS_EDGES.length, 1 - below);
        });
        for (int k = 0; k <= RMS_EDGES.length; k++) {
            outcomes.add(fleet.size() - 1, k, 1.0 / (RMS_EDGES.length + 1));
        }
        outcomes.mingle();
        return outcomes;
    }

    /** Ohms to the body. */
    public static Outcomes ohms(Fleet fleet, Step step) {
        Outcomes outcomes = new Outcomes(fleet.size(), OHM_CLASSES + 1);
        int at = 0;
        for (WireModel model : fleet.models()) {
            for (OptionalDouble ohms : model.ohms(step)) {
                outcomes.takeOhms(at++, ohms);
            }
        }
        for (int k = 0; k < OHM_CLASSES; k++) {
            outcomes.add(at, k, 0.65 / OHM_CLASSES);
        }
        outcomes.add(at, OHM_CLASSES, 0.35);
        outcomes.mingle();
        return outcomes;
    }

    private void takeOhms(int at, OptionalDouble ohms) {
        if (ohms.isEmpty()) {
            add(at, OHM_CLASSES, 0.85);
            for (int k = 10; k < OHM_CLASSES; k++) {
                add(at, k, 0.15 / (OHM_CLASSES - 10));
            }
            return;
        }
        double mean = Likelihood.decades(ohms.getAsDouble());
        double spread = Likelihood.decadeSpread(ohms.getAsDouble());
        double below = 0;
        for (int k = 0; k < OHM_CLASSES; k++) {
            double edge = LEAST_DECADE + (k + 1) * CLASS_DECADES;
            double to = k == OHM_CLASSES - 1 ? 1 : Bell.below(edge, mean, spread);
            add(at, k, 0.99 * (to - below));
            below = to;
        }
        add(at, OHM_CLASSES, 0.01);
    }

    /** What is told of each drawn wire. */
    private interface Told {
        void of(Shows shows, double volts, int at);
    }

    private void each(Fleet fleet, Step step, Told told) {
        int at = 0;
        for (WireModel model : fleet.models()) {
            List<Shows> all = model.shows(step, Meter.USUAL_OHMS);
            for (int car = 0; car < model.cars(); car++) {
                double volts = all.get(car).volts(model.battery(car, step.key()));
                told.of(all.get(car), Double.isNaN(volts) ? 0 : volts, at++);
            }
        }
    }

    private void spreadVolts(int at, double mean, double spread, double share) {
        double below = 0;
        for (int k = 0; k < VOLT_CLASSES; k++) {
            double edge = LEAST_VOLTS + (k + 1) * CLASS_VOLTS;
            double to = k == VOLT_CLASSES - 1 || edge > mean + 5 * spread
                    ? 1
                    : edge < mean - 5 * spread ? 0 : Bell.below(edge, mean, spread);
            add(at, k, share * (to - below));
            below = to;
        }
    }

    private void add(int wire, int outcome, double share) {
        shares[wire * classes + outcome] += (float) share;
    }

    /** Some readings go wrong, and then show anything. */
    private void mingle() {
        for (int i = 0; i < shares.length; i++) {
            shares[i] = (float) (shares[i] * (1 - Likelihood.MISHAP) + Likelihood.MISHAP / classes);
        }
    }

    /** How many bits the outcome is expected to tell about the role: the mutual information of the two. */
    public double bits(Belief belief) {
        Fleet fleet = belief.fleet();
        Map<WireRole, double[]> joint = new EnumMap<>(WireRole.class);
        for (int i = 0; i < fleet.size(); i++) {
            double weight = belief.weight(i);
            if (weight > LEAST_WEIGHT) {
                double[] ofRole = joint.computeIfAbsent(fleet.role(i), r -> new double[classes]);
                for (int k = 0; k < classes; k++) {
                    ofRole[k] += weight * shares[i * classes + k];
                }
            }
        }
        double[] all = new double[classes];
        double information = 0;
        for (double[] ofRole : joint.values()) {
            double sum = 0;
            for (int k = 0; k < classes; k++) {
                all[k] += ofRole[k];
                sum += ofRole[k];
                information += plogp(ofRole[k]);
            }
            information -= plogp(sum);
        }
        for (double each : all) {
            information -= plogp(each);
        }
        return Math.max(0, information / Math.log(2));
    }

    private static double plogp(double p) {
        return p > 0 ? p * Math.log(p) : 0;
    }
}
