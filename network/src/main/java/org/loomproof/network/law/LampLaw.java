package org.loomproof.network.law;

import org.loomproof.network.law.Term.Filament;
import org.loomproof.network.part.Lamp;

/** One filament. */
final class LampLaw {
    private LampLaw() {}

    static PartEquations equations(Lamp lamp) {
        return PartEquations.of(new Filament(0, 1, FilamentCurve.of(lamp), When.ALWAYS));
    }
}
