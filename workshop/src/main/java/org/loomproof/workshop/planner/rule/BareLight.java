package org.loomproof.workshop.planner.rule;

import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.trade.resistor.PreferredValues;
import org.loomproof.workshop.trade.supply.SupplyPoint;

/**
 * What stands before an indicator that is a bare light-emitting diode: the smallest preferred resistor with which it carries no more
 * than it may at the highest supply, at its fewest volts and with the resistor at its least, R · (1 − t) ≥ (U − Uf) / I.
 */
final class BareLight {

    private BareLight() {}

    static Ohms resistance(Extra light) {
        double most = light.draws().orElseThrow().low().value();
        double forward = light.forward().orElseThrow().low().value();
        double printed = (SupplyPoint.HIGH.volts().value() - forward) / most / (1 - PreferredValues.E96.tolerance());
        return PreferredValues.E96.list().stream()
                .filter(ohms -> ohms.value() >= printed)
                .findFirst()
                .orElseThrow();
    }
}
