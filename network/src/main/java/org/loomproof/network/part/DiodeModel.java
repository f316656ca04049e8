package org.loomproof.network.part;

/**
 * Shockley junction with series resistance: i = Is (exp(u / (n Vt)) - 1), v = u + Rs i, Vt = kT/q = 25.852 mV at 27 °C.
 *
 * <p>The presets give typical curves of a family, fitted so that the data-sheet forward voltages hold; common practice, no
 * published source.
 *
 * @param saturationAmps Is, above zero
 * @param emission n, above zero
 * @param seriesOhms Rs, zero or more
 */
public record DiodeModel(double saturationAmps, double emission, double seriesOhms) {
    /** kT/q at 27 °C (300.15 K), from the exact SI constants. */
    public static final double THERMAL_VOLTS = 1.380649e-23 * 300.15 / 1.602176634e-19;

    /** Rectifier, 1 A class: about 0.93 V at 1 A. */
    public static final DiodeModel SILICON_1A = new DiodeModel(14.11e-9, 1.984, 0.034);

    /** Rectifier, 3 A class: about 0.9 V at 3 A. */
    public static final DiodeModel SILICON_3A = new DiodeModel(30e-9, 1.8, 0.010);

    /** Rectifier, 6 A class: about 0.9 V at 6 A. */
    public static final DiodeModel SILICON_6A = new DiodeModel(60e-9, 1.8, 0.006);

    /** Small signal diode: about 0.7 V at 10 mA. */
    public static final DiodeModel SILICON_SIGNAL = new DiodeModel(2.52e-9, 1.752, 0.568);

    /** Schottky rectifier, 1 A class: about 0.4 V at 1 A. */
    public static final DiodeModel SCHOTTKY_1A = new DiodeModel(2.0e-6, 1.05, 0.050);

    /** Red indicator: about 1.9 V at 10 mA. */
    public static final DiodeModel LED_RED = new DiodeModel(1.0e-18, 2.0, 2.0);

    /** Blue or white indicator: about 3.1 V at 10 mA. */
    public static final DiodeModel LED_WHITE = new DiodeModel(1.0e-24, 2.35, 6.0);

    /** A transistor's body diode or the clamp of an integrated output. */
    public static final DiodeModel BODY = new DiodeModel(1.0e-12, 1.1, 0.050);

    /** A protection diode of a logic input. */
    public static final DiodeModel PROTECTION = new DiodeModel(1.0e-14, 1.0, 10.0);

    /** Of silicon, as it is seen from room temperature: what a junction would drop at any current near absolute zero. Textbooks, from memory. */
    public static final double SILICON_GAP_VOLTS = 1.2;

    public DiodeModel {
        if (!(saturationAmps > 0) || !(emission > 0) || !(seriesOhms >= 0)) {
            throw new IllegalArgumentException(
                    "a diode needs saturation current and emission above zero and series resistance not below, was %s, %s, %s"
                            .formatted(saturationAmps, emission, seriesOhms));
        }
        if (Double.isInfinite(saturationAmps) || Double.isInfinite(emission) || Double.isInfinite(seriesOhms)) {
            throw new IllegalArgumentException("a diode's figures must be finite");
        }
    }

    /**
     * The same diode, known at 20 °C, at another temperature: at any current its junction's voltage goes straight to the gap as
     * temperature goes to zero, u(T) = g - (g - u(T0)) T / T0, so that n Vt grows as T and
     *
     * <pre>Is(T) = Is(T0) exp(g / (n Vt(T0)) (1 - T0 / T))</pre>
     *
     * With silicon's gap a junction of 0.65 V loses 1.9 mV a kelvin (about 2 is common practice).
     *
     * @param celsius above absolute zero
     * @param gapVolts g, above zero
     */
    public DiodeModel atCelsius(double celsius, double gapVolts) {
        if (!(gapVolts > 0) || Double.isInfinite(gapVolts)) {
            throw new IllegalArgumentException("a gap above zero is needed, was " + gapVolts + " V");
        }
        double warmer = Kelvin.shareOfReference(celsius);
        return new DiodeModel(
                saturationAmps * Math.exp(gapVolts / slopeVolts() * (1 - 1 / warmer)), emission * warmer, seriesOhms);
    }

    /** n Vt: the voltage over which the current grows e-fold. */
    public double slopeVolts() {
        return emission * THERMAL_VOLTS;
    }
}
