package org.loomproof.workshop.trade.wire;

import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.trade.table.Table;

/** What the insulation of added wire bears, and how conductors in one bundle warm each other. */
public final class Insulation {
    private static final Table TABLE = Table.read(Insulation.class, "insulation.csv");

    /**
     * Conductors that carry current at the same time leave each other less: their number to this power. It is drawn through
     * the one published reading, and meets another one (35 wires of which 7 are loaded: 0.52, from memory) within 3 %.
     */
    private static final double BUNDLE_EXPONENT =
            Math.log(value("bundle-factor")) / Math.log(value("bundle-wires") * value("bundle-share-loaded"));

    private static final double HEAT_PER_VOLUME = value("heat-per-volume");

    private Insulation() {}

    /** The temperature that insulation bears for long when nothing is said of it. */
    public static Celsius usual() {
        return new Celsius(value("usual-insulation"));
    }

    /**
     * What is left of a conductor's free-air current in a bundle.
     *
     * @param loaded how many of the bundle's conductors carry current at the same time, itself included
     */
    public static double bundleFactor(double loaded) {
        return loaded <= 1 ? 1 : Math.pow(loaded, BUNDLE_EXPONENT);
    }

    /** Heat that a cubic millimetre of copper takes for one kelvin, in joules. */
    public static double heatPerVolume() {
        return HEAT_PER_VOLUME;
    }

    private static double value(String quantity) {
        return TABLE.findRow("quantity", quantity)
                .orElseThrow(() -> new IllegalStateException("insulation.csv has no " + quantity))
                .number("value");
    }
}
