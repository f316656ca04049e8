package org.loomproof.workshop.meter.evidence;

import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.meter.reading.Measured;
import org.loomproof.workshop.meter.reading.Reading;
import org.loomproof.workshop.meter.reading.Shown;
import org.loomproof.workshop.meter.reading.Step;
import org.loomproof.workshop.meter.reading.Step.KeyAt;

/**
 * What a wire shows of which nothing is known: often nothing or the battery, else anything. It stands for what we have no
 * model of, and for readings that went wrong. Common practice, no published source.
 */
final class Anything {

    private static final double USUAL_BATTERY = 12.3;
    private static final double LEVEL_SPREAD = 0.14;
    private static final double LEVEL_SPREAD_WITHOUT_BATTERY = 0.2;
    private static final double LEAST_VOLTS = -1;
    private static final double BEYOND_BATTERY = 2;
    private static final double DECADES_OF_OHMS = 8;

    private Anything() {}

    /**
     * The same for a wire of an unknown sort of which something has been read: most of what is done in a car leaves a wire
     * as it was, so it probably shows again what it showed in the nearest state that was read.
     */
    static double density(Reading reading, List<Reading> earlier) {
        double battery = reading.batteryVolts().orElse(USUAL_BATTERY);
        double fresh = density(reading.shown(), reading.measured(), battery);
        Optional<Reading> nearest = nearest(reading, earlier);
        if (nearest.isEmpty() || !(reading.shown() instanceof Shown.Steady(double volts, double digit))) {
            return fresh;
        }
        boolean known = reading.batteryVolts().isPresent()
                && nearest.get().batteryVolts().isPresent();
        double spread = known ? LEVEL_SPREAD : LEVEL_SPREAD_WITHOUT_BATTERY;
        double before = ((Shown.Steady) nearest.get().shown()).value();
        double ratio = battery / nearest.get().batteryVolts().orElse(USUAL_BATTERY);
        double again = 0.5 * Bell.density(volts, before, spread) + 0.5 * Bell.density(volts, before * ratio, spread);
        double stays = staysAsItWas(reading.step(), nearest.get().step());
        return 0.98 * stays * again + (1 - stays) * fresh;
    }

    /** The last steady reading of volts that is fewest changes away. */
    private static Optional<Reading> nearest(Reading reading, List<Reading> earlier) {
        Optional<Reading> best = Optional.empty();
        int fewest = Integer.MAX_VALUE;
        for (Reading each : earlier) {
            if (isVolts(each) && isVolts(reading) && each.shown() instanceof Shown.Steady) {
                int changes = changes(reading.step(), each.step());
                if (changes <= fewest) {
                    fewest = changes;
                    best = Optional.of(each);
                }
            }
        }
        return best;
    }

    private static int changes(Step one, Step other) {
        int key = Math.abs(turns(one.key()) - turns(other.key()));
        int worked = one.worked() == other.worked() ? 0 : 1;
        int asleep = one.asleep() == other.asleep() ? 0 : 2;
        return 2 * key + worked + asleep + (one.aid() == other.aid() ? 0 : 2);
    }

    /** How far a hand has turned the key. */
    private static int turns(KeyAt key) {
        return switch (key) {
            case NO_KEY -> 0;
            case OFF -> 1;
            case ACCESSORY -> 2;
            case ON -> 3;
            case CRANKING -> 4;
            case RUNNING -> 5;
        };
    }

    private static double staysAsItWas(Step now, Step before) {
        boolean sameKey = now.key() == before.key();
        boolean sameElse = now.asleep() == before.asleep() && now.aid() == before.aid();
        boolean wasKeyOn = turns(before.key()) >= turns(KeyAt.ON);
        return sameKey && sameElse ? 0.9 : sameElse && wasKeyOn ? 0.7 : 0.5;
    }

    private static boolean isVolts(Reading reading) {
        return reading.measured() == Measured.VOLTS;
    }

    static double density(Shown shown, Measured measured, double battery) {
        return switch (measured) {
            case VOLTS -> volts(shown, battery);
            case OHMS -> ohms(shown);
            case AMPS -> 1;
        };
    }

    private static double volts(Shown shown, double battery) {
        double anywhere = 1 / (battery + BEYOND_BATTERY - LEAST_VOLTS);
        return switch (shown) {
            case Shown.Steady s ->
                0.8
                        * (0.27 * Bell.density(s.value(), 0, 0.15)
                                + 0.23 * Bell.density(s.value(), battery, 0.3)
                                + 0.5 * anywhere);
            case Shown.Moving m -> 0.12 * anywhere;
            case Shown.Floating f -> 0.08;
            case Shown.Alternating a -> 0.6 * Bell.density(a.rms(), 0, 0.15) + 0.6 * Bell.density(a.rms(), 0, 4);
            case Shown.Overload o -> Likelihood.SAYS_NOTHING;
            case Shown.NotTaken n -> 1;
        };
    }

    private static double ohms(Shown shown) {
        return switch (shown) {
            case Shown.Steady s -> 0.65 / DECADES_OF_OHMS;
            case Shown.Moving m -> 0.65 / DECADES_OF_OHMS;
            case Shown.Overload o -> 0.35;
            case Shown.Floating f -> Likelihood.SAYS_NOTHING;
            case Shown.Alternating a -> Likelihood.SAYS_NOTHING;
            case Shown.NotTaken n -> 1;
        };
    }
}
