package org.loomproof.network.part;

/**
 * What a 12 V lead-acid battery of six cells gives by its charge and temperature.
 *
 * <p>Open-circuit volts by charge: US Army TM 5-3805-262-20, rested. By temperature: +0.2 mV a kelvin and cell, from memory,
 * about the table's 26.7 °C. Inner resistance at 26.7 °C from the cold cranking rating (7.2 V after 30 s at -18 °C, SAE):
 * (open-circuit volts - 7.2 V) / rated amps is what it has at -18 °C; it grows as cranking power falls, by US Army TM
 * 5-4210-230-14&amp;P-1 table 3. Charge leaves it as it is: a discharged battery has more, how much is not published.
 *
 * @param coldCrankingAmps amps of the rating, above zero
 */
public record StorageBattery(double coldCrankingAmps) {
    private static final double[] CHARGE = {0, 0.25, 0.5, 0.75, 1};
    private static final double[] OPEN_CIRCUIT_VOLTS = {11.7, 12.0, 12.2, 12.4, 12.6};
    private static final double[] CELSIUS = {-28.8, -17.8, 0, 26.7};
    private static final double[] CRANKING_SHARE = {0.20, 0.40, 0.65, 1.00};

    /** Temperature of the tables' full power. */
    private static final double WARM_CELSIUS = 26.7;

    private static final double VOLTS_PER_KELVIN = 6 * 0.2e-3;
    private static final double RATING_VOLTS = 7.2;
    private static final double RATING_CELSIUS = -18;

    public StorageBattery {
        if (!(coldCrankingAmps > 0) || Double.isInfinite(coldCrankingAmps)) {
            throw new IllegalArgumentException("cold cranking amps must be above zero, was " + coldCrankingAmps);
        }
    }

    /**
     * Volts at rest, without load.
     *
     * @param charge 0 for empty to 1 for full
     */
    public double openCircuitVolts(double charge, double celsius) {
        if (!(charge >= 0 && charge <= 1)) {
            throw new IllegalArgumentException("charge must lie between 0 and 1, was " + charge);
        }
        return between(CHARGE, OPEN_CIRCUIT_VOLTS, charge) + VOLTS_PER_KELVIN * (celsius - WARM_CELSIUS);
    }

    /** Inner resistance of a full one. */
    public double innerOhms(double celsius) {
        double atRating = (openCircuitVolts(1, RATING_CELSIUS) - RATING_VOLTS) / coldCrankingAmps;
        return atRating * between(CELSIUS, CRANKING_SHARE, RATING_CELSIUS) / between(CELSIUS, CRANKING_SHARE, celsius);
    }

    /** A battery of this kind in a network. */
    public Battery battery(PartId id, Node plus, Node minus, double charge, double celsius) {
        return new Battery(id, plus, minus, openCircuitVolts(charge, celsius), innerOhms(celsius));
    }

    /** On the straight line between the table's neighbours; at its end the last value stands. */
    private static double between(double[] x, double[] y, double at) {
        if (at <= x[0]) {
            return y[0];
        }
        int right = 1;
        while (right < x.length - 1 && x[right] < at) {
            right++;
        }
        double share = Math.min(1, (at - x[right - 1]) / (x[right] - x[right - 1]));
        return y[right - 1] + share * (y[right] - y[right - 1]);
    }
}
