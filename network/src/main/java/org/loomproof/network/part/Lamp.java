package org.loomproof.network.part;

import java.util.List;

/**
 * A filament lamp. In a steady state its resistance rises with the voltage across it, see {@code law.FilamentCurve}; in a run
 * in time it lags behind, see {@code law.FilamentHeat}.
 *
 * @param ratedVolts voltage of the rating
 * @param ratedWatts power at that voltage
 * @param coldToHotOhms resistance of the cold filament over that of the hot one, above 0 and below 1
 * @param heatSeconds heat held at the rating over rated watts: how long the rated power takes to put it there
 */
public record Lamp(
        PartId id, Node a, Node b, double ratedVolts, double ratedWatts, double coldToHotOhms, double heatSeconds)
        implements Part {
    /** Cold over hot resistance of a vacuum or gas-filled tungsten lamp; common practice, no published source. */
    public static final double TUNGSTEN_COLD_TO_HOT = 0.08;

    /** Of a lamp of the 20 W class, which then gives nearly full light after 0.2 s; common practice, no published source. */
    public static final double USUAL_HEAT_SECONDS = 0.2;

    private static final double TUNGSTEN_EXPONENT = 1.2;

    public Lamp {
        Require.positive(ratedVolts, "rated volts", id);
        Require.positive(ratedWatts, "rated watts", id);
        Require.that(coldToHotOhms > 0 && coldToHotOhms < 1, "cold to hot ohms must lie between 0 and 1", id);
        Require.positive(heatSeconds, "heat seconds", id);
    }

    /** A lamp of the usual thermal lag. */
    public Lamp(PartId id, Node a, Node b, double ratedVolts, double ratedWatts, double coldToHotOhms) {
        this(id, a, b, ratedVolts, ratedWatts, coldToHotOhms, USUAL_HEAT_SECONDS);
    }

    /** A lamp of the usual cold resistance. */
    public Lamp(PartId id, Node a, Node b, double ratedVolts, double ratedWatts) {
        this(id, a, b, ratedVolts, ratedWatts, TUNGSTEN_COLD_TO_HOT);
    }

    /**
     * The same lamp, its cold resistance known at 20 °C, where it is warmer or colder: tungsten resists as T^1.2 (from memory).
     * Lit, it is as hot as before.
     *
     * @param celsius above absolute zero
     */
    public Lamp atCelsius(double celsius) {
        double cold = coldToHotOhms * Math.pow(Kelvin.shareOfReference(celsius), TUNGSTEN_EXPONENT);
        return new Lamp(id, a, b, ratedVolts, ratedWatts, cold, heatSeconds);
    }

    /** Resistance at the rated voltage. */
    public double hotOhms() {
        return ratedVolts * ratedVolts / ratedWatts;
    }

    @Override
    public List<Pin> pins() {
        return List.of(new Pin("a", a), new Pin("b", b));
    }
}
