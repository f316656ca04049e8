package org.loomproof.workshop.trade.wire;

import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.quantity.SquareMillimetres;

/**
 * What a conductor may carry, and how warm it gets.
 *
 * <p>The rise above the air goes with the square of the current, so what may be carried in warmer air is the published figure
 * times {@code sqrt((insulation - air) / (insulation - 30))}; 33 CFR 183.425 prints 0.85 for 105 °C insulation in 50 °C, the
 * square root gives 0.856. In a bundle it is less again ({@link Insulation#bundleFactor}).
 */
public final class ConductorHeat {

    private ConductorHeat() {}

    /** What the conductor may carry for long; nothing where the air is as hot as its insulation bears. */
    public static Amps mayCarry(SquareMillimetres size, Surroundings around) {
        double rise = around.insulation().value() - around.ambient().value();
        if (rise <= 0) {
            return new Amps(0);
        }
        double tableRise = around.insulation().value() - Ampacity.AMBIENT.value();
        double air = Math.min(1, Math.sqrt(rise / tableRise));
        return new Amps(
                Ampacity.inFreeAir(size, around.insulation()).value() * air * Insulation.bundleFactor(around.loaded()));
    }

    /**
     * How warm a conductor is estimated to be, on the warm side: FAA AC 43.13-1B, chapter 11 section 5,
     * {@code T2 = T1 + (TR - T1) sqrt(I2 / Imax)}. The circular calls it conservative; heating by the square would give less.
     *
     * @param ambient T1
     * @param insulation TR
     * @param current I2
     * @param mayCarry Imax, the current that brings it to TR
     */
    public static Celsius estimate(Celsius ambient, Celsius insulation, Amps current, Amps mayCarry) {
        double share = Math.sqrt(current.value() / mayCarry.value());
        return new Celsius(ambient.value() + (insulation.value() - ambient.value()) * share);
    }

    /**
     * How warm a conductor is after some time, by itself: it nears its lasting rise by a time constant that its copper, its
     * resistance and its published current give. Without loss to the air the rise would be straight in time
     * ({@code I² ρ / (A² c)}); that is its slope at the start.
     *
     * @param from how warm it is at the start
     */
    public static Celsius after(
            SquareMillimetres size, Surroundings around, Celsius from, Amps current, Seconds lasting) {
        return after(size, around, mayCarry(size, around.alone()), from, current, lasting);
    }

    /** The same where it is known what the conductor may carry by itself. */
    public static Celsius after(
            SquareMillimetres size, Surroundings around, Amps may, Celsius from, Amps current, Seconds lasting) {
        if (may.value() <= 0) {
            return around.ambient();
        }
        double lastingRise = around.insulation().value() - around.ambient().value();
        double multiple = current.value() / may.value();
        double end = around.ambient().value() + lastingRise * multiple * multiple;
        double copper = Conductors.leastCopper(size).value();
        double hotResistivity = Copper.resistivity() * Copper.temperatureFactor(around.insulation());
        double slope = may.value() * may.value() * hotResistivity / (copper * copper * Insulation.heatPerVolume());
        double timeConstant = lastingRise / slope;
        return new Celsius(end + (from.value() - end) * Math.exp(-lasting.value() / timeConstant));
    }
}
