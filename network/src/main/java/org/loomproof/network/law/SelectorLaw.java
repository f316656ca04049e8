package org.loomproof.network.law;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.loomproof.network.law.Term.Throw;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.SelectorSwitch;
import org.loomproof.network.part.SteppedSwitch;

/** One throw for each position that joins anything. */
final class SelectorLaw {
    private SelectorLaw() {}

    /** Pins as {@link SelectorSwitch#pins()} numbers them. */
    static PartEquations equations(SelectorSwitch selector) {
        List<Term> terms = new ArrayList<>();
        int pin = 0;
        for (SelectorSwitch.Pole pole : selector.poles()) {
            int common = pin++;
            for (int position = 0; position < pole.throwAt().size(); position++) {
                Optional<Node> end = pole.throwAt().get(position);
                if (end.isPresent()) {
                    terms.add(new Throw(common, pin++, 1 / selector.closedOhms(), position));
                }
            }
        }
        return new PartEquations(terms, 0, Optional.empty());
    }

    static PartEquations equations(SteppedSwitch stepped) {
        List<Term> terms = new ArrayList<>();
        for (int position = 0; position < stepped.ohmsAt().size(); position++) {
            OptionalDouble ohms = stepped.ohmsAt().get(position);
            if (ohms.isPresent()) {
                terms.add(new Throw(0, 1, 1 / ohms.getAsDouble(), position));
            }
        }
        return new PartEquations(terms, 0, Optional.empty());
    }
}
