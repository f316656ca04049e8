package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.planner.coupling.Driving;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.explain.Measurements;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.planner.survey.Readers;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.trade.resistor.PreferredValues;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.trade.wire.AllowedDrop;
import org.loomproof.workshop.words.Phrase;

/**
 * A wire on which a module tells buttons apart by their resistance is given the step of its own button: by a resistor in an
 * output to ground, corrected for what the output leaves, or by the dry contact of a relay and the factory's own value.
 */
final class SteppedOutput {

    private SteppedOutput() {}

    static List<Option> options(Job job, Lead lead, Wish wish, Circuit circuit, List<Phrase> passedOver) {
        List<PathStep.Input> readers = Readers.of(job.brief().sheet(), circuit);
        Optional<PathStep.Input> pulling =
                readers.stream().filter(reader -> reader.pullUp().isPresent()).findFirst();
        if (pulling.isEmpty() || !(circuit.switching().active() instanceof Level.Resistance(var ohms))) {
            return List.of(Option.of(List.of(Aside.hold(
                    lead, wish, Measurements.stepsOf(circuit), Phrase.of("hold.steps-not-said", circuit.id())))));
        }
        Step step = Step.of(ohms, pulling.get()).inTheMiddle(readers);
        List<Option> options = new ArrayList<>();
        List<Phrase> lost = new ArrayList<>(passedOver);
        Driving.Line line =
                new Driving.Line(circuit, Side.LOW, step.amps(), step.amps(), job.run(circuit), AllowedDrop.SIGNAL);
        if (lead.port() instanceof Port.LowSide out) {
            if (out.bodyDiode() || out.clamp()) {
                lost.add(Phrase.of("lost.output-not-free", lead.id(), circuit.id()));
            } else {
                Ohms resistance = PreferredValues.E96.nearest(
                        step.behind(new Volts(out.saturation().typical().value()
                                * step.amps().value()
                                / out.rating().typical().value())));
                Phrase because = Phrase.of("rule.step-resistor", circuit.id(), step.volts(), resistance);
                options.add(join(lead, wish, circuit, Driving.stepped(lead, line, resistance), because, lost));
            }
        }
        byRelay(job, lead, wish, line, step, lost, options);
        return options;
    }

    /** The step to be given: what leaves it on the wire, and what pulls the wire up. */
    private record Step(Ohms ohms, double pullUp, Volts from) {
        /** The factory's own step; a wire that is pulled to the battery is reckoned at rest. */
        static Step of(Ohms ohms, PathStep.Input reader) {
            return new Step(
                    ohms,
                    reader.pullUp().orElseThrow().typical().value(),
                    reader.pullUpTo().map(Figure::typical).orElse(SupplyPoint.REST.volts()));
        }

        /** In the middle of the window, where the module's thresholds on both sides of the factory's step are known. */
        Step inTheMiddle(List<PathStep.Input> readers) {
            OptionalDouble over = readers.stream()
                    .mapToDouble(reader -> reader.highAbove().high().value())
                    .filter(volts -> volts < volts().value())
                    .max();
            OptionalDouble under = readers.stream()
                    .mapToDouble(reader -> reader.lowBelow().low().value())
                    .filter(volts -> volts > volts().value())
                    .min();
            if (over.isEmpty() || under.isEmpty()) {
                return this;
            }
            double middle = (over.getAsDouble() + under.getAsDouble()) / 2;
            return new Step(new Ohms(pullUp * middle / (from.value() - middle)), pullUp, from);
        }

        Volts volts() {
            return new Volts(from.value() * ohms.value() / (ohms.value() + pullUp));
        }

        Amps amps() {
            return new Amps(from.value() / (ohms.value() + pullUp));
        }

        /** What leaves the same level on the wire with those volts lost behind it. */
        Ohms behind(Volts lost) {
            return new Ohms((volts().value() - lost.value()) / amps().value());
        }
    }

    private static void byRelay(
            Job job, Lead lead, Wish wish, Driving.Line line, Step step, List<Phrase> lost, List<Option> options) {
        Found constant = job.constant();
        Side side = lead.port() instanceof Port.HighSide ? Side.HIGH : Side.LOW;
        if (side == Side.LOW && !(constant instanceof Found.Usable)) {
            if (options.isEmpty()) {
                options.add(AddedLoads.without(lead, wish, constant));
            }
            return;
        }
        Optional<RelayType> relay = job.relayFor(step.amps(), lead.port(), 1);
        if (relay.isEmpty()) {
            if (options.isEmpty()) {
                options.add(AddedLoads.tooWeak(job, lead, wish));
            }
            return;
        }
        Circuit supply = constant instanceof Found.Usable usable ? usable.first() : line.circuit();
        Driving.Relaying relaying = new Driving.Relaying(
                relay.get(), job.signalDiode(), job.coilFeed(supply), job.loadFeed(supply, lead), false);
        Ohms resistance = PreferredValues.E96.nearest(step.ohms());
        options.add(join(
                lead,
                wish,
                line.circuit(),
                Driving.steppedByRelay(lead, side, line, resistance, relaying),
                Phrase.of("rule.step-by-relay", line.circuit().id(), step.volts(), resistance),
                lost));
    }

    private static Option join(Lead lead, Wish wish, Circuit circuit, Draft draft, Phrase because, List<Phrase> lost) {
        return Option.of(List.of(new Decision.Join(lead, wish, List.of(circuit.id()), draft, because, lost)));
    }
}
