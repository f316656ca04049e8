package org.loomproof.network.law;

import org.loomproof.network.law.Term.Capacitance;
import org.loomproof.network.part.Capacitor;

/** Nothing in a steady state; i = C du/dt behind the series resistance in time. */
final class CapacitorLaw {
    private CapacitorLaw() {}

    static PartEquations equations(Capacitor capacitor) {
        return PartEquations.of(new Capacitance(0, 1, capacitor.farads(), capacitor.seriesOhms(), When.ALWAYS));
    }
}
