package org.loomproof.workshop.meter.comeback;

import java.util.Set;
import org.loomproof.workshop.meter.evidence.Bell;
import org.loomproof.workshop.meter.reading.MeterFacts;

/**
 * How well a cause goes with what was said and measured. The shares and spreads are common practice without a published source;
 * what they are good for is measured by planting every mishap of the examples.
 */
final class Evidence {

    /** One reading in thirty is noted wrongly, or taken at another wire. */
    private static final double WRONG_READING = 0.03;

    /** A bad joint may hold just while it is measured; where the trouble comes and goes, often. */
    private static final double SOUND_NOW = 0.04;

    private static final double SOUND_NOW_AND_THEN = 0.35;

    /** An owner tells of what a mishap does, or has not met it yet. */
    private static final double TOLD = 0.9;

    private static final double NOT_TOLD = 0.5;

    /** Two troubles at once by chance. */
    private static final double BY_CHANCE = 0.02;

    /** Contacts, probes and tolerances: near a pole, and more so between the two. */
    private static final double POLE_VOLTS = 0.12;

    private static final double BETWEEN_SHARE = 0.06;
    private static final double FLOATING_VOLTS = 0.8;
    private static final double DIGIT = 0.01;

    private final boolean nowAndThen;

    Evidence(boolean nowAndThen) {
        this.nowAndThen = nowAndThen;
    }

    /** Likelihood of what was said, under a cause that shows these symptoms. */
    double ofSaid(Set<Symptom> said, Set<Symptom> shown) {
        double likelihood = 1;
        for (Symptom symptom : said) {
            likelihood *= shown.contains(symptom) ? TOLD : BY_CHANCE;
        }
        for (Symptom symptom : shown) {
            likelihood *= said.contains(symptom) ? 1 : NOT_TOLD;
        }
        return likelihood;
    }

    /** The same for whatever is not of the plan. */
    double ofSaidElsewhere(Set<Symptom> said) {
        return said.stream().mapToDouble(Symptom::elsewhereShare).reduce(1, (a, b) -> a * b);
    }

    /** Likelihood density, per volt, of a reading in a car of that cause, and in the sound car that it may be just now. */
    double ofTaken(Taken taken, Shows now, Shows sound) {
        double any = 1 / taken.batteryVolts();
        double share = nowAndThen ? SOUND_NOW_AND_THEN : SOUND_NOW;
        double right = (1 - share) * density(taken, now, any) + share * density(taken, sound, any);
        return WRONG_READING * any + (1 - WRONG_READING) * right;
    }

    private static double density(Taken taken, Shows shows, double any) {
        return switch (shows) {
            case Shows.At(double volts) -> Bell.density(taken.volts(), volts, spread(volts, taken.batteryVolts()));
            case Shows.Floating floating -> Bell.density(taken.volts(), 0, FLOATING_VOLTS);
            case Shows.Anything anything -> any;
        };
    }

    /** Volts by which readings of the same car scatter, standard deviation. */
    static double spread(double volts, double batteryVolts) {
        double fromPole = Math.max(0, Math.min(volts, batteryVolts - volts));
        // A limit of error is taken as a rectangular distribution, as the GUM does (from memory).
        double meter = MeterFacts.USUAL.limit(volts, DIGIT) / Math.sqrt(3);
        return Math.hypot(meter, POLE_VOLTS + BETWEEN_SHARE * fromPole);
    }
}
