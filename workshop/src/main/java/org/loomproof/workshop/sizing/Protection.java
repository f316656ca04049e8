package org.loomproof.workshop.sizing;

import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.fuse.BladeFuse;
import org.loomproof.workshop.trade.fuse.Fuses;
import org.loomproof.workshop.trade.fuse.OpeningTimes;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.trade.wire.ConductorHeat;
import org.loomproof.workshop.trade.wire.Conductors;
import org.loomproof.workshop.trade.wire.Surroundings;

/**
 * Which fuse protects a conductor. The least current at which a fuse surely opens (1.35 times its rating, within an hour) may
 * flow for so long that the conductor must bear it for good. Twice the rating may flow for two minutes; the insulation may then
 * be hotter than it bears for good, by what it survives for hours. And a short at the far end must draw that much. Opening
 * times are those of UL 248-14, which are published for glass fuses; blade fuses are remembered as faster, and nothing rests on
 * that.
 */
public final class Protection {

    /**
     * What a short meets before the added wire: battery, factory wire, fuse holder, and the body on the way back. Common
     * practice, no published source.
     */
    private static final Ohms BEFORE_THE_WIRE = new Ohms(0.1);

    /**
     * Insulation survives so many kelvins more than its class for six hours: ISO 6722-1, thermal overload, from memory. It only
     * makes fuses smaller.
     */
    private static final double OVERLOAD_KELVINS = 50;

    private Protection() {}

    /** The largest blade fuse that protects a conductor, and that the trade allows; nothing when none does. */
    public static Amps ceiling(SquareMillimetres size, Surroundings around) {
        Surroundings alone = around.alone();
        Amps may = ConductorHeat.mayCarry(size, alone);
        double allowed = Conductors.fuseCeiling(size).value();
        return Fuses.listBlades().stream()
                .map(BladeFuse::rating)
                .filter(fuse -> fuse.value() <= allowed)
                .filter(fuse -> bears(size, alone, may, fuse))
                .reduce((smaller, larger) -> larger)
                .orElse(new Amps(0));
    }

    private static boolean bears(SquareMillimetres size, Surroundings around, Amps may, Amps fuse) {
        Celsius rated = around.insulation();
        double soon = OpeningTimes.soon();
        Celsius then = ConductorHeat.after(
                size, around, may, rated, new Amps(soon * fuse.value()), OpeningTimes.longest(soon));
        return OpeningTimes.surely() * fuse.value() <= may.value() && then.value() <= rated.value() + OVERLOAD_KELVINS;
    }

    /** What a tired battery sends through a short to the body at the far end of a run. */
    public static Amps farShort(Amps fuse, SquareMillimetres size, Metres length) {
        double ohms = BEFORE_THE_WIRE.value()
                + Fuses.coldResistance(fuse).value()
                + Conductors.ohmsPerMetre(size) * length.value();
        return new Amps(SupplyPoint.LOW.volts().value() / ohms);
    }

    /** True when a short anywhere along the run makes the fuse open within minutes: the far end draws least. */
    public static boolean opensOnAnyShort(Amps fuse, SquareMillimetres size, Metres length) {
        return farShort(fuse, size, length).value() >= OpeningTimes.soon() * fuse.value();
    }

    /** The longest run behind a fuse along which any short still makes it open within minutes. */
    public static Metres longestRun(Amps fuse, SquareMillimetres size) {
        Volts supply = SupplyPoint.LOW.volts();
        double most = supply.value() / (OpeningTimes.soon() * fuse.value());
        double left =
                most - BEFORE_THE_WIRE.value() - Fuses.coldResistance(fuse).value();
        return new Metres(Math.max(0, left / Conductors.ohmsPerMetre(size)));
    }
}
