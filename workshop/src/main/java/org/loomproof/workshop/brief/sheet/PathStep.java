package org.loomproof.workshop.brief.sheet;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.quantity.Watts;

/**
 * One step along a factory circuit's path. Places ({@link Supply}, {@link Ground}, {@link Point}, {@link Here}) are where
 * wires meet; the others are parts between two places. Two places that stand next to each other in a path are one place.
 */
public sealed interface PathStep {

    /** The battery's plus post. */
    record Supply() implements PathStep {}

    /** The body, or a ground point of the body. */
    record Ground() implements PathStep {}

    /** A named junction that other paths may name too. */
    record Point(PointId id) implements PathStep {}

    /** The wire that the circuit's entry describes: where a tap or a cut is made. */
    record Here() implements PathStep {}

    /** A step with a part in it. */
    sealed interface Part extends PathStep {
        /** The part's name, unique on the sheet. */
        ElementId id();
    }

    /** A factory fuse. */
    record Fuse(ElementId id, Figure<Amps> rating, Figure<Ohms> coldResistance) implements Part {}

    /** A length of factory wire. */
    record Wire(ElementId id, Figure<Ohms> resistance) implements Part {}

    /** A contact worked by hand (or by a door), closed at some positions. */
    record Switch(ElementId id, OperableId operatedBy, Set<String> closedAt, Figure<Ohms> closedResistance)
            implements Part {
        public Switch {
            closedAt = Collections.unmodifiableSet(new LinkedHashSet<>(closedAt));
        }
    }

    /** The coil of a factory relay. */
    record Coil(ElementId id, RelayId relay, Figure<Ohms> resistance, Figure<Volts> pullIn, Figure<Volts> dropOut)
            implements Part {}

    /** A contact of a factory relay. */
    record Contact(ElementId id, RelayId relay, boolean closedWhenEnergised, Figure<Ohms> closedResistance)
            implements Part {}

    /** A filament lamp; its resistance follows its filament. */
    record Lamp(ElementId id, Figure<Watts> power) implements Part {}

    /** Anything else that does work: a solenoid, a motor, a heater, a module's supply. */
    record Load(ElementId id, LoadKind kind, Figure<Ohms> resistance) implements Part {}

    /** A resistor. */
    record Resistor(ElementId id, Figure<Ohms> resistance) implements Part {}

    /** A silicon diode; forwards when it conducts in the order the path is written. */
    record Diode(ElementId id, boolean forwards) implements Part {}

    /**
     * A factory input at the end of a path: reads low or high against the body.
     *
     * @param pullUp to {@code pullUpTo}, or to the battery's plus when that is empty
     * @param pullDown to the body
     */
    record Input(
            ElementId id,
            Optional<Figure<Ohms>> pullUp,
            Optional<Figure<Volts>> pullUpTo,
            Optional<Figure<Ohms>> pullDown,
            Figure<Volts> lowBelow,
            Figure<Volts> highAbove)
            implements Part {}

    /** The name of a factory relay: its coil and its contacts share it. */
    record RelayId(String value) {}

    /** What sort of load: decides inrush and what it does to a contact. */
    enum LoadKind {
        MOTOR,
        SOLENOID,
        HEATER,
        ELECTRONIC
    }
}
