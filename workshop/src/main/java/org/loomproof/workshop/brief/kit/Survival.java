package org.loomproof.workshop.brief.kit;

import java.util.Optional;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.quantity.Volts;

/**
 * What the kit's maker says that the controller bears at its supply; what is empty nobody says.
 *
 * @param cranking it keeps its state while the engine is cranked, down to these volts
 * @param loadDump a load dump of at most these volts at its supply leaves it whole
 * @param reversed a battery of these volts connected the wrong way round for a minute leaves it whole
 */
public record Survival(
        Optional<Figure<Volts>> cranking, Optional<Figure<Volts>> loadDump, Optional<Figure<Volts>> reversed) {

    /** Nothing is said. */
    public static final Survival UNSAID = new Survival(Optional.empty(), Optional.empty(), Optional.empty());
}
