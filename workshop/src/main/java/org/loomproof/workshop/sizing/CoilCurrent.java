package org.loomproof.workshop.sizing;

import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.trade.wire.Copper;

/**
 * What a relay coil draws and needs, by Ohm's law and the temperature coefficient of copper.
 *
 * <p>Coil resistance at temperature T is {@code R20 (1 + 0.00393 (T - 20))}; the ampere-turns that pull the armature do not
 * change, so the pull-in voltage grows in the same proportion.
 */
public final class CoilCurrent {

    private CoilCurrent() {}

    /** What the coil draws at the highest supply in normal use, at 20 °C. */
    public static Amps most(Ohms coil) {
        return new Amps(SupplyPoint.HIGH.volts().value() / coil.value());
    }

    /**
     * True when the coil pulls in at a tired battery's voltage although it is hot.
     *
     * @param pullIn at 20 °C
     * @param hottest the coil's temperature
     * @param lost volts lost before the coil, such as an output's saturation and the wiring
     */
    public static boolean pullsInHot(Volts pullIn, Celsius hottest, Volts lost) {
        double needed = pullIn.value() * Copper.temperatureFactor(hottest);
        return SupplyPoint.LOW.volts().value() - lost.value() >= needed;
    }
}
