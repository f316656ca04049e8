package org.loomproof.workshop.planner.rule;

import java.util.ArrayList;
import java.util.Comparator;
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
import org.loomproof.workshop.planner.coupling.Target;
import org.loomproof.workshop.planner.explain.Measurements;
import org.loomproof.workshop.planner.grammar.Catalogue;
import org.loomproof.workshop.planner.grammar.Composer;
import org.loomproof.workshop.planner.grammar.Drive;
import org.loomproof.workshop.planner.grammar.Enumeration;
import org.loomproof.workshop.planner.grammar.Gate;
import org.loomproof.workshop.planner.grammar.Grammar;
import org.loomproof.workshop.planner.grammar.LeftOut;
import org.loomproof.workshop.planner.grammar.Word;
import org.loomproof.workshop.planner.grammar.Word.Buffering;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.planner.survey.Readers;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.buffer.BufferType;
import org.loomproof.workshop.trade.buffer.Buffers;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.trade.resistor.PreferredValues;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.trade.wire.AllowedDrop;
import org.loomproof.workshop.words.Phrase;

/**
 * A wire on which a module tells buttons apart by their resistance is given the step of its own button: by a resistor in an
 * output to ground, corrected for what the output leaves, or by the dry contact of a relay and the factory's own value; what the
 * grammar has besides comes after.
 */
final class SteppedOutput {

    private final Job job;
    private final Lead lead;
    private final Wish wish;
    private final Circuit circuit;
    private final Step step;

    private SteppedOutput(Job job, Lead lead, Wish wish, Circuit circuit, Step step) {
        this.job = job;
        this.lead = lead;
        this.wish = wish;
        this.circuit = circuit;
        this.step = step;
    }

    static List<Option> options(Job job, Lead lead, Wish wish, Circuit circuit, List<Phrase> passedOver) {
        List<PathStep.Input> readers = Readers.of(job.brief().sheet(), circuit);
        Optional<PathStep.Input> pulling =
                readers.stream().filter(reader -> reader.pullUp().isPresent()).findFirst();
        if (pulling.isEmpty() || !(circuit.switching().active() instanceof Level.Resistance(var ohms))) {
            return List.of(Option.of(List.of(Aside.hold(
                    lead, wish, Measurements.stepsOf(circuit), Phrase.of("hold.steps-not-said", circuit.id())))));
        }
        Step step = Step.of(ohms, pulling.get()).inTheMiddle(readers);
        return new SteppedOutput(job, lead, wish, circuit, step).list(passedOver);
    }

    private List<Option> list(List<Phrase> passedOver) {
        Side side = lead.port() instanceof Port.HighSide ? Side.HIGH : Side.LOW;
        boolean leaks = lead.port() instanceof Port.LowSide out && (out.bodyDiode() || out.clamp());
        List<Phrase> lost = new ArrayList<>(passedOver);
        if (leaks) {
            lost.add(Phrase.of("lost.output-not-free", lead.id(), circuit.id()));
        }
        Enumeration<Word> found = Grammar.of(new Drive(side, Side.LOW, leaks, false, true, false))
                .leavingOut(word -> tooMuch(word, leaks));
        List<Searched> searched = List.of(new Searched(lead.id(), List.of(circuit.id()), found));
        List<Word> ordered = new ArrayList<>(found.words());
        ordered.sort(Comparator.comparingInt(Catalogue::rank));
        List<Option> options = new ArrayList<>();
        ordered.forEach(word -> options.add(join(word, side, lost).searched(searched)));
        if (options.isEmpty()) {
            options.add(
                    found.leftOut().containsKey(LeftOut.NO_SUPPLY)
                            ? AddedLoads.without(lead, wish, job.constant())
                            : AddedLoads.tooWeak(job, lead, wish).searched(searched));
        }
        return options;
    }

    /** A wire that tells levels apart is joined to no output that something may come back through. */
    private Optional<LeftOut> tooMuch(Word word, boolean leaks) {
        if (word.through().joined() && leaks) {
            return Optional.of(LeftOut.FEEDS_DEAD_CONTROLLER);
        }
        if (word.needsSupply() && !(job.constant() instanceof Found.Usable)) {
            return Optional.of(LeftOut.NO_SUPPLY);
        }
        return word.coils().isEmpty() || relay(word).isPresent() ? Optional.empty() : Optional.of(LeftOut.CURRENT);
    }

    private Optional<RelayType> relay(Word word) {
        return word.buffer() == Buffering.NONE
                ? job.relayFor(step.amps(), lead.port(), 1)
                : job.relayBehind(buffer(word), step.amps(), 1);
    }

    private static BufferType buffer(Word word) {
        return Buffers.workingOn(word.buffer() == Buffering.ON_GROUND);
    }

    /** What leaves the step's level on the wire, corrected for what is lost behind it. */
    private Ohms resistance(Word word) {
        double lost = 0;
        if (word.through().joined() && lead.port() instanceof Port.LowSide out) {
            lost = out.saturation().typical().value()
                    * step.amps().value()
                    / out.rating().typical().value();
        } else if (word.toBody().gate() == Gate.BUFFER) {
            lost = buffer(word).closed().value() * step.amps().value();
        }
        return PreferredValues.E96.nearest(lost == 0 ? step.ohms() : step.behind(new Volts(lost)));
    }

    private Option join(Word word, Side side, List<Phrase> lost) {
        Circuit supply = job.constant() instanceof Found.Usable usable ? usable.first() : circuit;
        Ohms resistance = resistance(word);
        Driving.Line line = new Driving.Line(
                new Target.Wire(circuit),
                Side.LOW,
                step.amps(),
                step.amps(),
                job.run(circuit),
                AllowedDrop.SIGNAL,
                false);
        Composer.Making making = new Composer.Making(
                relay(word).orElse(job.listRelays().getFirst()),
                job.signalDiode(),
                job.signalDiode(),
                buffer(word),
                resistance,
                job.coilFeed(supply, List.of(lead)),
                job.loadFeed(supply, lead));
        Draft draft = Composer.compose(word, lead, side, List.of(line), making);
        String rule = word.through().joined() ? "rule.step-resistor" : "rule.step-by-relay";
        Phrase because = Phrase.of(rule, circuit.id(), step.volts(), resistance);
        return Option.of(List.of(new Decision.Join(lead, wish, List.of(circuit.id()), draft, because, lost)));
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
}
