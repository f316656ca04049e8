package org.loomproof.workshop.sizing;

import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Watts;
import org.loomproof.workshop.trade.supply.SupplyPoint;

/** The heat of a resistor and the size that bears it. */
public final class ResistorHeat {

    /** What a drawer holds. Common practice, no published source. */
    private static final List<Double> SIZES = List.of(0.25, 0.5, 1.0, 2.0, 5.0, 10.0);

    /** A resistor taped into a loom has no air around it: it is loaded to half. Common practice, no published source. */
    private static final double LOADED = 0.5;

    private ResistorHeat() {}

    /** The most it can turn to heat in this car: the whole supply across it, {@code U² / R} at the highest in normal use. */
    public static Watts most(Ohms resistance) {
        double volts = SupplyPoint.HIGH.volts().value();
        return new Watts(volts * volts / resistance.value());
    }

    /** The smallest that bears the heat at half its rating; none when no drawer holds one. */
    public static Optional<Watts> size(Watts heat) {
        return SIZES.stream()
                .filter(rating -> heat.value() <= LOADED * rating)
                .findFirst()
                .map(Watts::new);
    }
}
