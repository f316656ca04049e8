package org.loomproof.network.law;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.network.law.Term.Conductance;
import org.loomproof.network.law.Term.Junction;
import org.loomproof.network.part.DiodeModel;
import org.loomproof.network.part.LogicInput;

/** Pull resistors and protection diodes to the controller's own supply and ground; they count whether it is alive or not. */
final class LogicInputLaw {
    private static final int INPUT = 0;
    private static final int SUPPLY = 1;
    private static final int GROUND = 2;

    private LogicInputLaw() {}

    static PartEquations equations(LogicInput input) {
        List<Term> terms = new ArrayList<>();
        input.pullUpOhms().ifPresent(ohms -> terms.add(Conductance.always(INPUT, SUPPLY, ohms)));
        input.pullDownOhms().ifPresent(ohms -> terms.add(Conductance.always(INPUT, GROUND, ohms)));
        if (input.protectionDiodes()) {
            ShockleyCurve protection = ShockleyCurve.of(DiodeModel.PROTECTION);
            terms.add(new Junction(INPUT, SUPPLY, protection, When.ALWAYS));
            terms.add(new Junction(GROUND, INPUT, protection, When.ALWAYS));
        }
        return new PartEquations(terms, 0, Optional.empty());
    }
}
