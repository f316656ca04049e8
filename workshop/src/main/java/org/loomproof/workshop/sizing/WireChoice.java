package org.loomproof.workshop.sizing;

import java.util.List;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.wire.Conductor;
import org.loomproof.workshop.trade.wire.ConductorHeat;
import org.loomproof.workshop.trade.wire.Copper;
import org.loomproof.workshop.trade.wire.Surroundings;

/**
 * Which wire goes into a run: thick enough for the drop allowed, for the current where it runs, and for the fuse in front of it.
 *
 * <p>Drop is {@code I · R' · L} for the run itself, as warm as it gets in the hottest air; the body as return is left out here
 * and is part of the proof.
 */
public final class WireChoice {

    private WireChoice() {}

    /**
     * What a run is for.
     *
     * @param current what flows in it
     * @param lasts whether that flows for long; what flows for seconds warms no wire that its fuse suits
     * @param length one way
     * @param allowed volts that may be lost along the run
     * @param fuse the fuse in front of it; nothing when there is none
     */
    public record Run(Amps current, boolean lasts, Metres length, Volts allowed, Amps fuse) {}

    /** Volts lost along a run at 20 °C. */
    public static Volts drop(Conductor conductor, Amps current, Metres length) {
        return new Volts(current.value() * conductor.ohmsPerMetre() * length.value());
    }

    /** Volts lost along a run whose copper is that warm. */
    public static Volts drop(Conductor conductor, Amps current, Metres length, Celsius temperature) {
        return new Volts(drop(conductor, current, length).value() * Copper.temperatureFactor(temperature));
    }

    /**
     * The thinnest of the sizes that does, or the thickest when none does.
     *
     * @param sizes thinnest first
     */
    public static Conductor choose(List<Conductor> sizes, Run run, Surroundings around) {
        return sizes.stream()
                .filter(Conductor::bought)
                .filter(size -> suits(size, run, around))
                .findFirst()
                .orElseGet(sizes::getLast);
    }

    /** True when the size bears the current, is protected by the fuse, and keeps the drop as warm as it gets. */
    public static boolean suits(Conductor size, Run run, Surroundings around) {
        Amps ceiling = size.fuseCeiling();
        Amps lasting = ConductorHeat.mayCarry(size.area(), around);
        double most = run.lasts() ? Math.min(lasting.value(), ceiling.value()) : ceiling.value();
        return run.current().value() <= most
                && run.fuse().value() <= Protection.ceiling(size.area(), around).value()
                && drop(size, run.current(), run.length(), warmth(run, lasting, around))
                                .value()
                        <= run.allowed().value();
    }

    /** A conductor that works for seconds is as warm as the air; one that works for long warms itself. */
    private static Celsius warmth(Run run, Amps lasting, Surroundings around) {
        return run.lasts() && lasting.value() > 0
                ? ConductorHeat.estimate(around.ambient(), around.insulation(), run.current(), lasting)
                : around.ambient();
    }
}
