package org.loomproof.network.law;

import org.loomproof.network.law.Term.Conductance;
import org.loomproof.network.law.Term.Stated;
import org.loomproof.network.part.Battery;

/** A source behind its inner resistance, in Norton's form. */
final class BatteryLaw {
    private BatteryLaw() {}

    static PartEquations equations(Battery battery) {
        return PartEquations.of(
                new Conductance(0, 1, 1 / battery.innerOhms(), battery.emfVolts(), When.ALWAYS, Stated.EMF));
    }
}
