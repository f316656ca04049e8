package org.loomproof.network.law;

import org.loomproof.network.law.Term.Conductance;
import org.loomproof.network.law.Term.Stated;

/** Ohm's law, for every part that is a plain resistance: resistor, wire, fuse, meter. */
final class ConductorLaw {
    private ConductorLaw() {}

    static PartEquations equations(double ohms) {
        return PartEquations.of(new Conductance(0, 1, 1 / ohms, 0, When.ALWAYS, Stated.OHMS));
    }
}
