package org.loomproof.workshop.planner.coupling;

import java.util.Optional;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.trade.buffer.BufferType;
import org.loomproof.workshop.trade.resistor.PreferredValues;
import org.loomproof.workshop.trade.supply.SupplyPoint;

/** Resistors that give a level to what reads a wire: the largest with which the level is surely read, for they waste the least. */
public final class PullUp {

    /** What the level stands beyond a threshold. Common practice, no published source. */
    private static final double RESERVE_VOLTS = 1;

    /** A wire through doors leaks; more ohms than this would let it sag. Common practice, no published source. */
    private static final double MOST_OHMS = 10_000;

    private PullUp() {}

    /** What flows through a resistor from the supply to the body on a full battery. */
    public static Amps wastes(Ohms resistance) {
        return new Amps(SupplyPoint.REST.volts().value() / resistance.value());
    }

    /** What brings an input to the pole that means something to it, against its own pull. */
    public static Ohms level(Port.Input input) {
        return switch (input.active()) {
            case HIGH ->
                raising(input.highAbove().high().value(), input.pullDown().map(Figure::low));
            case LOW -> lowering(input.lowBelow().low().value(), input.pullUp().map(Figure::low));
        };
    }

    /** What brings the input of a buffer to the pole that it works on, against its own resistance. */
    public static Ohms level(BufferType buffer) {
        return buffer.worksOnGround()
                ? lowering(
                        SupplyPoint.CRANKING.volts().value()
                                - buffer.switchesAt().value(),
                        Optional.of(buffer.input()))
                : raising(buffer.switchesAt().value(), Optional.of(buffer.input()));
    }

    /**
     * From the supply: the divider with the reader's own pull-down stands over the threshold at the lowest supply, the resistor
     * at its most: U · Rd / (Rd + R) is at least the threshold and a reserve.
     */
    private static Ohms raising(double threshold, Optional<Ohms> down) {
        double lowest = SupplyPoint.CRANKING.volts().value();
        return largest(down.map(own -> own.value() * (lowest / (threshold + RESERVE_VOLTS) - 1)));
    }

    /**
     * To the body: the divider with the reader's own pull-up stays under the threshold at the highest supply, the resistor at
     * its most: U · R / (Ru + R) and a reserve is at most the threshold.
     */
    private static Ohms lowering(double threshold, Optional<Ohms> up) {
        double level = Math.max(threshold - RESERVE_VOLTS, RESERVE_VOLTS / 2);
        double highest = SupplyPoint.HIGH.volts().value();
        return largest(up.map(own -> own.value() * level / (highest - level)));
    }

    private static Ohms largest(Optional<Double> most) {
        return PreferredValues.E24.largestUpTo(
                new Ohms(Math.min(most.orElse(MOST_OHMS), MOST_OHMS) / (1 + PreferredValues.E24.tolerance())));
    }
}
