package org.loomproof.workshop.planner.coupling;

import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.trade.resistor.PreferredValues;
import org.loomproof.workshop.trade.supply.SupplyPoint;

/** The resistor that lifts a wire which its switch has let go, so that an input surely reads it high. */
public final class PullUp {

    /** What the level stands over the input's threshold while the starter turns. Common practice, no published source. */
    private static final double RESERVE_VOLTS = 1;

    /** A wire through doors leaks; more ohms than this would let it sag. Common practice, no published source. */
    private static final double MOST_OHMS = 10_000;

    private PullUp() {}

    /**
     * The largest preferred value with which the divider of the resistor and the input's own pull-down stands over the
     * threshold at the lowest supply, the resistor at its most: U · Rd / (Rd + R) is at least the threshold and a reserve.
     */
    public static Ohms choose(Port.Input input) {
        double wanted = input.highAbove().high().value() + RESERVE_VOLTS;
        double lowest = SupplyPoint.CRANKING.volts().value();
        double most = input.pullDown()
                .map(down -> down.low().value() * (lowest / wanted - 1))
                .orElse(MOST_OHMS);
        return PreferredValues.E24.largestUpTo(
                new Ohms(Math.min(most, MOST_OHMS) / (1 + PreferredValues.E24.tolerance())));
    }
}
