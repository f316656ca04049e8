package org.loomproof.network.law;

import java.util.List;
import java.util.Optional;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Capacitor;
import org.loomproof.network.part.Diode;
import org.loomproof.network.part.Fuse;
import org.loomproof.network.part.HighSideOutput;
import org.loomproof.network.part.Inductor;
import org.loomproof.network.part.Lamp;
import org.loomproof.network.part.LogicInput;
import org.loomproof.network.part.LowSideOutput;
import org.loomproof.network.part.Meter;
import org.loomproof.network.part.Motor;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PulsedSource;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.part.SelectorSwitch;
import org.loomproof.network.part.SteppedSwitch;
import org.loomproof.network.part.Suppressor;
import org.loomproof.network.part.Switch;
import org.loomproof.network.part.Wire;
import org.loomproof.network.part.Zener;

/**
 * All that one part adds to the equations of its network.
 *
 * @param terms its two-terminal elements
 * @param innerNodes how many nodes it has inside, beyond its pins
 * @param threshold what moves its contacts, if anything does
 */
public record PartEquations(List<Term> terms, int innerNodes, Optional<Threshold> threshold) {
    public PartEquations {
        terms = List.copyOf(terms);
    }

    static PartEquations of(Term... terms) {
        return new PartEquations(List.of(terms), 0, Optional.empty());
    }

    /** What any part adds, by the law of its kind. */
    public static PartEquations of(Part part) {
        return switch (part) {
            case Battery battery -> BatteryLaw.equations(battery);
            case Resistor resistor -> ConductorLaw.equations(resistor.ohms());
            case Wire wire -> ConductorLaw.equations(wire.ohms());
            case Fuse fuse -> ConductorLaw.equations(fuse.coldOhms());
            case Meter meter -> ConductorLaw.equations(meter.ohms());
            case Switch contact -> SwitchLaw.equations(contact);
            case Relay relay -> RelayLaw.equations(relay);
            case Diode diode -> DiodeLaw.equations(diode);
            case Lamp lamp -> LampLaw.equations(lamp);
            case LowSideOutput output -> OutputLaw.equations(output);
            case HighSideOutput output -> OutputLaw.equations(output);
            case LogicInput input -> LogicInputLaw.equations(input);
            case Capacitor capacitor -> CapacitorLaw.equations(capacitor);
            case Inductor inductor -> CoilLaw.equations(inductor);
            case Zener zener -> ZenerLaw.equations(zener);
            case Suppressor suppressor -> ZenerLaw.equations(suppressor);
            case Motor motor -> MotorLaw.equations(motor);
            case PulsedSource source -> BatteryLaw.equations(source);
            case SelectorSwitch selector -> SelectorLaw.equations(selector);
            case SteppedSwitch stepped -> SelectorLaw.equations(stepped);
        };
    }
}
