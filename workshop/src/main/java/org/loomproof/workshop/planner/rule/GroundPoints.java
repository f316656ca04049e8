package org.loomproof.workshop.planner.rule;

import java.util.List;
import java.util.stream.Stream;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.words.Phrase;

/**
 * The factory's own ground points, such as the engine's or a screw behind trim, and why none is taken: a bad one lifts the whole
 * controller by what flows through its resistance, and a good one still carries another circuit's current.
 */
final class GroundPoints {

    /** A ground may lift what hangs on it by this. Common practice, no published source. */
    private static final Volts MOST = new Volts(0.1);

    private GroundPoints() {}

    /** What speaks against each ground point of the sheet. */
    static List<Phrase> passedOver(Job job) {
        Amps sinks = sinks(job.brief().kit());
        return job.finder().list(CircuitRole.GROUND).stream()
                .map(point -> against(point, sinks))
                .toList();
    }

    private static Phrase against(Circuit point, Amps sinks) {
        Ohms least = new Ohms(toBody(point).mapToDouble(r -> r.low().value()).sum());
        Ohms most = new Ohms(toBody(point).mapToDouble(r -> r.high().value()).sum());
        Volts lifted = new Volts(most.value() * sinks.value());
        if (least.value() * sinks.value() > MOST.value()) {
            return Phrase.of("lost.ground-bad", point.id(), least, most, sinks, MOST);
        }
        return lifted.value() > MOST.value()
                ? Phrase.of("lost.ground-doubtful", point.id(), least, most, lifted, sinks)
                : Phrase.of("lost.ground-shared", point.id(), lifted);
    }

    /** What lies between the point and the battery's minus. */
    private static Stream<Figure<Ohms>> toBody(Circuit point) {
        return point.paths().stream()
                .filter(path -> path.contains(new PathStep.Here()) && path.contains(new PathStep.Ground()))
                .limit(1)
                .flatMap(List::stream)
                .flatMap(step -> switch (step) {
                    case PathStep.Wire wire -> Stream.of(wire.resistance());
                    case PathStep.Resistor resistor -> Stream.of(resistor.resistance());
                    case PathStep.Switch contact -> Stream.of(contact.closedResistance());
                    case PathStep other -> Stream.<Figure<Ohms>>empty();
                });
    }

    /** The most that the controller sends to ground at one time: its own standby, and all that it sinks while it sounds. */
    private static Amps sinks(Kit kit) {
        double outputs = kit.leads().stream()
                .filter(lead -> kit.behaviour().isOn(lead.id(), ControllerState.SOUNDING))
                .mapToDouble(lead -> lead.port() instanceof Port.LowSide out
                        ? out.rating().high().value()
                        : 0)
                .sum();
        return new Amps(kit.standby().high().value() + outputs);
    }
}
