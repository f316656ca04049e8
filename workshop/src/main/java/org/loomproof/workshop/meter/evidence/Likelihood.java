package org.loomproof.workshop.meter.evidence;

import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.loomproof.workshop.meter.reading.MeterFacts;
import org.loomproof.workshop.meter.reading.Reading;
import org.loomproof.workshop.meter.reading.Shown;
import org.loomproof.workshop.meter.reading.Step;
import org.loomproof.workshop.meter.role.Shows;

/**
 * How likely a reading is on a drawn wire: density per volt, per decade of ohms, or a plain share for words. The shares and
 * spreads are common practice without a published source; what they are good for is measured on a set that does not know them.
 */
public final class Likelihood {

    /** One reading in thirty is noted wrongly, or on another wire, or with the probe slipped. */
    static final double MISHAP = 0.03;

    /**
     * Readings that one hand takes with one meter at one place do not err apart from each other, so each counts a little less
     * than whole: its likelihood to this power.
     */
    static final double OWN_SHARE = 0.75;

    static final double SAYS_NOTHING = 1e-3;

    /** Contacts, probes and ageing beyond the ranges of the parts: volts, and a share of what is shown. */
    static final double LOOSE_VOLTS = 0.06;

    static final double LOOSE_SHARE = 0.015;
    private static final double POLE_VOLTS = 0.4;
    private static final double SMALL_GHOST_VOLTS = 0.3;
    private static final double CRANKING_UNSTEADY_VOLTS = 0.45;
    /** How far the battery of the nearest drawn car may be off where nobody measured it. */
    private static final double BATTERY_UNKNOWN_VOLTS = 0.13;

    private static final double ENGINE_BATTERY_UNKNOWN_VOLTS = 0.5;

    /** Test leads and their contact. */
    private static final double LEAD_OHMS = 0.25;

    private static final double LOOSE_OHMS_DECADES = 0.05;

    /** An ohmmeter that has volts on its leads shows anything. */
    private static final double DEAD_VOLTS = 0.15;

    private Likelihood() {}

    /** True for a cranking sample of a meter that is too slow to see a start. */
    public static boolean isTooSlow(Reading reading) {
        return reading.step().key() == Step.KeyAt.CRANKING && reading.meter().pace() == MeterFacts.Pace.SLOW;
    }

    /**
     * Likelihood on a drawn wire, mishaps included.
     *
     * @param shows what the wire shows in the reading's step
     * @param before what it shows with the key on, which a slow meter may still show while cranking
     * @param ohms what an ohmmeter shows; asked only for a reading in ohms
     * @param battery volts at the posts
     * @param looseVolts between drawn cars at a level that is neither pole
     */
    static double of(
            Reading reading,
            Shows shows,
            Shows before,
            Supplier<OptionalDouble> ohms,
            double battery,
            double looseVolts) {
        double anything = Anything.density(reading.shown(), reading.measured(), battery);
        double own = switch (reading.measured()) {
            case VOLTS -> volts(reading, shows, before, battery, looseVolts);
            case OHMS -> ohms(reading, shows, ohms, battery, anything);
            case AMPS -> 1;
        };
        return counted(MISHAP * anything + (1 - MISHAP) * (Double.isNaN(own) ? anything : own));
    }

    /** A likelihood as far as it counts beside others of the same hand. */
    static double counted(double density) {
        return Math.pow(density, OWN_SHARE);
    }

    private static double volts(Reading reading, Shows shows, Shows before, double battery, double looseVolts) {
        double mean = shows.volts(battery);
        if (!isTooSlow(reading)) {
            return volts(reading, shows, mean, battery, looseVolts);
        }
        double stale = before.volts(battery + 1.5);
        return 0.34 * volts(reading, shows, mean, battery, looseVolts)
                + 0.33 * volts(reading, before, (mean + stale) / 2, battery, looseVolts)
                + 0.33 * volts(reading, before, stale, battery, looseVolts);
    }

    private static double volts(Reading reading, Shows shows, double mean, double battery, double looseVolts) {
        double spread = spread(reading, mean);
        if (looseVolts > 0 && mean > POLE_VOLTS && mean < battery - POLE_VOLTS) {
            spread = Math.hypot(spread, looseVolts);
        }
        boolean cranks = reading.step().key() == Step.KeyAt.CRANKING;
        return switch (reading.shown()) {
            case Shown.Steady s ->
                shows.floats()
                        ? steadyGhost(mean) * Bell.density(s.value(), mean, Math.hypot(spread, ghost(mean)))
                        : shows.pulses()
                                ? 0.7 * Bell.density(s.value(), mean, Math.hypot(spread, 0.15 * shows.swing()))
                                : 0.98 * Bell.density(s.value(), mean, spread);
            case Shown.Moving m -> {
                double middle = (m.low() + m.high()) / 2;
                double width = m.high() - m.low();
                yield shows.floats()
                        ? 0.25 * Bell.density(middle, mean, 1.5 + ghost(mean))
                        : shows.pulses()
                                ? 0.28 * Bell.density(middle, mean, 0.3 + 0.3 * shows.swing())
                                : (cranks ? 0.15 : 0.015) * Bell.density(middle, mean, spread + width / 2);
            }
            case Shown.Floating f -> shows.floats() ? 0.2 : shows.pulses() ? 0.02 : 0.002;
            case Shown.Alternating a -> {
                double rms = 0.45 * shows.swing();
                double loose = shows.floats() ? 0.6 : (cranks ? 0.3 : 0.08) + 0.4 * rms;
                yield (rms > 0 ? 1 : 2) * Bell.density(a.rms(), rms, loose);
            }
            case Shown.Overload o -> SAYS_NOTHING;
            case Shown.NotTaken n -> 1;
        };
    }

    /** How far a ghost wanders: with its size, and a little always. */
    static double ghost(double mean) {
        return 0.03 + 0.35 * Math.abs(mean);
    }

    /** How often a wire that nothing holds is noted as a plain value: nearly always where next to nothing leaks into it. */
    static double steadyGhost(double mean) {
        return Math.abs(mean) < SMALL_GHOST_VOLTS ? 0.9 : 0.55;
    }

    private static double spread(Reading reading, double mean) {
        double resolution = reading.shown() instanceof Shown.Steady s ? s.resolution() : 0.01;
        // A limit of error is taken as a rectangular distribution, as the GUM does (from memory).
        double meter = reading.meter().limit(mean, resolution) / Math.sqrt(3);
        double sum = meter * meter + square(LOOSE_VOLTS) + square(LOOSE_SHARE * mean);
        boolean cranks = reading.step().key() == Step.KeyAt.CRANKING;
        if (cranks) {
            sum += square(CRANKING_UNSTEADY_VOLTS);
        }
        if (reading.batteryVolts().isEmpty()) {
            boolean turns = cranks || reading.step().key() == Step.KeyAt.RUNNING;
            sum += square(turns ? ENGINE_BATTERY_UNKNOWN_VOLTS : BATTERY_UNKNOWN_VOLTS);
        }
        return Math.sqrt(sum);
    }

    private static double ohms(
            Reading reading, Shows shows, Supplier<OptionalDouble> ohms, double battery, double anything) {
        boolean isDead = reading.step().aid() == Step.Aid.BATTERY_OFF;
        if (!isDead && (shows.pulses() || Math.abs(shows.volts(battery)) > DEAD_VOLTS)) {
            return anything;
        }
        OptionalDouble real = ohms.get();
        return switch (reading.shown()) {
            case Shown.Steady s -> ohms(s.value(), real);
            case Shown.Moving m -> ohms((m.low() + m.high()) / 2, real);
            case Shown.Overload o -> real.isEmpty() ? 0.85 : real.getAsDouble() > 5e6 ? 0.4 : 0.005;
            case Shown.Floating f -> SAYS_NOTHING;
            case Shown.Alternating a -> SAYS_NOTHING;
            case Shown.NotTaken n -> 1;
        };
    }

    /** Density per decade. What hangs on an open line may still show a module's own megohms. */
    private static double ohms(double shown, OptionalDouble real) {
        if (real.isEmpty()) {
            return shown > 1e4 ? 0.05 : 0.002;
        }
        return 0.95 * Bell.density(decades(shown), decades(real.getAsDouble()), decadeSpread(real.getAsDouble()));
    }

    static double decades(double ohms) {
        return Math.log10(Math.max(0, ohms) + LEAD_OHMS);
    }

    static double decadeSpread(double ohms) {
        return LOOSE_OHMS_DECADES + 0.2 * LEAD_OHMS / (Math.max(0, ohms) + LEAD_OHMS);
    }

    private static double square(double x) {
        return x * x;
    }
}
