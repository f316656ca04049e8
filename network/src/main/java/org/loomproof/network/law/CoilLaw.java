package org.loomproof.network.law;

import org.loomproof.network.law.Term.Coil;
import org.loomproof.network.law.Term.Conductance;
import org.loomproof.network.law.Term.Stated;
import org.loomproof.network.part.Inductor;

/** Resistance and inductance of a winding, one term: v = R i + L di/dt. */
final class CoilLaw {
    private CoilLaw() {}

    static PartEquations equations(Inductor inductor) {
        return PartEquations.of(term(0, 1, inductor.windingOhms(), inductor.henries()));
    }

    /** A winding without inductance worth the name is a plain resistance. */
    static Term term(int from, int to, double ohms, double henries) {
        return henries > 0
                ? new Coil(from, to, ohms, henries, When.ALWAYS)
                : new Conductance(from, to, 1 / ohms, 0, When.ALWAYS, Stated.OHMS);
    }
}
