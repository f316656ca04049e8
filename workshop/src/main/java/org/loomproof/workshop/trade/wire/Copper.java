package org.loomproof.workshop.trade.wire;

import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.quantity.WireGauge;
import org.loomproof.workshop.trade.table.Table;

/** Copper by the book: resistivity, its growth with temperature, and the areas of the American wire gauge. */
public final class Copper {
    private static final Table TABLE = Table.read(Copper.class, "copper.csv");
    private static final double RESISTIVITY = value("resistivity-20");
    private static final double TEMPERATURE_COEFFICIENT = value("temperature-coefficient");

    private static final double KELVIN_REFERENCE = 20;

    private Copper() {}

    static double value(String quantity) {
        return TABLE.findRow("quantity", quantity)
                .orElseThrow(() -> new IllegalStateException("copper.csv has no " + quantity))
                .number("value");
    }

    /** Ohms of one metre of solid copper of that cross-section at 20 °C: resistivity over area. */
    public static double ohmsPerMetre(SquareMillimetres area) {
        return RESISTIVITY / area.value();
    }

    /** The cross-section of solid copper that resists so many ohms a metre at 20 °C. */
    static SquareMillimetres area(double ohmsPerMetre) {
        return new SquareMillimetres(RESISTIVITY / ohmsPerMetre);
    }

    /** Resistivity at 20 °C, in ohm millimetres. */
    public static double resistivity() {
        return RESISTIVITY / 1000;
    }

    /** How much more copper resists at a temperature than at 20 °C: {@code 1 + 0.00393 (T - 20)}. */
    public static double temperatureFactor(Celsius temperature) {
        return 1 + TEMPERATURE_COEFFICIENT * (temperature.value() - KELVIN_REFERENCE);
    }

    /**
     * The solid cross-section of an American wire gauge: the diameter is {@code 0.127 mm · 92^((36 - n) / 39)}.
     *
     * @param gauge the number; 0 is 1/0, -1 is 2/0
     */
    public static SquareMillimetres area(int gauge) {
        return WireGauge.area(gauge);
    }
}
