package org.loomproof.network.law;

import org.loomproof.network.law.Term.Conductance;
import org.loomproof.network.law.Term.Stated;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.PulsedSource;

/** A source behind its inner resistance, in Norton's form. */
final class BatteryLaw {
    private BatteryLaw() {}

    /** At its average; a setting or a run in time states another voltage. */
    static PartEquations equations(PulsedSource source) {
        return PartEquations.of(
                new Conductance(0, 1, 1 / source.innerOhms(), source.averageVolts(), When.ALWAYS, Stated.EMF));
    }

    static PartEquations equations(Battery battery) {
        return PartEquations.of(
                new Conductance(0, 1, 1 / battery.innerOhms(), battery.emfVolts(), When.ALWAYS, Stated.EMF));
    }
}
