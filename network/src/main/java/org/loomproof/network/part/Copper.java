package org.loomproof.network.part;

/**
 * Annealed copper by the book: R = L / (58 A) (1 + 0.00393 (T - 20)), with L in metres, A in mm² and T in °C. Resistivity
 * from IEC 60028 (1/58 Ω mm²/m at 20 °C), temperature coefficient from the International Annealed Copper Standard.
 */
public final class Copper {
    /** Conductivity at 20 °C, metres over ohm mm². */
    private static final double METRES_PER_OHM_SQUARE_MILLIMETRE = 58;

    private static final double PER_CELSIUS = 0.00393;
    private static final double REFERENCE_CELSIUS = 20;

    /** Absolute zero is -273.15 °C; the straight line ends long before, and no wiring is used below this. */
    private static final double COLDEST_CELSIUS = -100;

    private Copper() {}

    /**
     * How much more copper resists at a temperature than at 20 °C.
     *
     * @throws IllegalArgumentException below -100 °C, where the straight line no longer holds
     */
    public static double temperatureFactor(double celsius) {
        if (!(celsius >= COLDEST_CELSIUS) || Double.isInfinite(celsius)) {
            throw new IllegalArgumentException("copper is told from " + COLDEST_CELSIUS + " °C on, was " + celsius);
        }
        return 1 + PER_CELSIUS * (celsius - REFERENCE_CELSIUS);
    }

    /**
     * Resistance of a solid length, ohms.
     *
     * @param metres length, not negative
     * @param squareMillimetres area of the copper itself, above zero
     */
    public static double ohms(double metres, double squareMillimetres, double celsius) {
        if (!(metres >= 0) || !(squareMillimetres > 0)) {
            throw new IllegalArgumentException("a length not below and an area above zero are needed, was " + metres
                    + " m, " + squareMillimetres + " mm²");
        }
        return metres / (METRES_PER_OHM_SQUARE_MILLIMETRE * squareMillimetres) * temperatureFactor(celsius);
    }
}
