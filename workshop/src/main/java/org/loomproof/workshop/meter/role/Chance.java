package org.loomproof.workshop.meter.role;

import java.util.SplittableRandom;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.quantity.Quantity;

/** Draws figures from their ranges, from a seed. */
public final class Chance {

    /** Beyond this ratio of high to low a range is one of orders of magnitude. */
    private static final double WIDE = 5;

    /** A range of the trade holds most cars and not all: so many are drawn from one stretched at both ends. */
    private static final double BEYOND = 0.25;

    private static final double STRETCH = 1.5;

    /** No module holds a wire above the battery it lives on. */
    private static final double MOST_MODULE_VOLTS = 12.4;

    private static final long FIRST_SEED = 20_260_101;

    private final SplittableRandom random;

    private final double stratum;

    private Chance(long seed, double stratum) {
        this.random = new SplittableRandom(seed);
        this.stratum = stratum;
    }

    /**
     * Draws as cars are built: mostly near the typical value. Cars of the same number draw alike whatever the wire, so that two
     * wires which are built alike show alike, and no difference between them comes from the draw.
     */
    static Chance usual(int car, int cars) {
        return new Chance(FIRST_SEED + car, (car + 0.5) / cars);
    }

    /**
     * The voltage at which a module holds a wire: what a meter shows straight away. Spread evenly by its magnitude over the
     * stretched range, so that any level has a car beside it.
     */
    double level(Figure<? extends Quantity> figure) {
        if (!figure.isRange()) {
            return from(figure);
        }
        double low = figure.low().value() / STRETCH;
        double high = Math.min(figure.high().value() * STRETCH, MOST_MODULE_VOLTS);
        return low * Math.pow(high / low, stratum);
    }

    /** A value from a figure's range. */
    double from(Figure<? extends Quantity> figure) {
        return from(
                figure.low().value(), figure.typical().value(), figure.high().value());
    }

    private double from(double low, double typical, double high) {
        if (low == high) {
            return low;
        }
        if (low > 0 && happens(BEYOND)) {
            double half = STRETCH * Math.sqrt(high / low);
            return magnitude(Math.sqrt(low * high) / half, Math.sqrt(low * high) * half);
        }
        if (low > 0 && high / low > WIDE) {
            return Math.exp(triangular(Math.log(low), Math.log(typical), Math.log(high)));
        }
        return triangular(low, typical, high);
    }

    /** A value anywhere between. */
    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** A value anywhere between by its order of magnitude. */
    double magnitude(double low, double high) {
        return Math.exp(between(Math.log(low), Math.log(high)));
    }

    boolean happens(double share) {
        return random.nextDouble() < share;
    }

    private double triangular(double low, double typical, double high) {
        double share = (typical - low) / (high - low);
        double u = random.nextDouble();
        return u < share
                ? low + Math.sqrt(u * (high - low) * (typical - low))
                : high - Math.sqrt((1 - u) * (high - low) * (high - typical));
    }
}
