package org.loomproof.network.law;

import org.loomproof.network.law.Term.Conductance;
import org.loomproof.network.part.Switch;

/** A resistance when closed, nothing when open. */
final class SwitchLaw {
    private SwitchLaw() {}

    static PartEquations equations(Switch contact) {
        return PartEquations.of(Conductance.when(When.SET, 0, 1, contact.closedOhms()));
    }
}
