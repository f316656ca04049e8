package org.loomproof.network.law;

import org.loomproof.network.law.Term.Junction;
import org.loomproof.network.part.Diode;

/** One junction. */
final class DiodeLaw {
    private DiodeLaw() {}

    static PartEquations equations(Diode diode) {
        return PartEquations.of(new Junction(0, 1, ShockleyCurve.of(diode.model()), When.ALWAYS));
    }
}
