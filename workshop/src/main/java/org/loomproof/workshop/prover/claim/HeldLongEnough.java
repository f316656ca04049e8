package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/**
 * A watched opening holds its level without a break for longer than the controller's input takes to read it, so that a door
 * opened and shut again is noticed, and one whose light is dimmed by pulses. Where the kit does not say how long its input takes and nothing dims
 * the wire, nothing is stated; the proof says so among its bounds.
 */
public final class HeldLongEnough implements Claim {

    /**
     * Who opens a door to get in or to reach in leaves it open for at least this long; a shorter opening is a contact that
     * bounces. Common practice, no published source.
     */
    static final Seconds SHORTEST_OPENING = new Seconds(1);

    /** One lead that an opening is read by, with how long the level then stands on its wire. */
    private record Reader(LeadId lead, Optional<Figure<Seconds>> readsAfter, Optional<Figure<Seconds>> pulsed) {

        double heldSeconds() {
            return pulsed.map(p -> p.typical().value()).orElse(SHORTEST_OPENING.value());
        }

        double leastHeldSeconds() {
            return pulsed.map(p -> p.low().value()).orElse(SHORTEST_OPENING.value());
        }

        double toSpareSeconds() {
            return readsAfter
                    .map(reads -> heldSeconds() - reads.typical().value())
                    .orElse(Double.NaN);
        }

        double leastToSpareSeconds() {
            return readsAfter
                    .map(reads -> leastHeldSeconds() - reads.high().value())
                    .orElse(Double.NaN);
        }

        boolean isSaid() {
            return readsAfter.isPresent();
        }

        /** What is surely too slow, and what nobody says of a wire that is dimmed. */
        boolean mayMiss() {
            return isSaid() ? leastToSpareSeconds() < 0 : pulsed.isPresent();
        }
    }

    @Override
    public String name() {
        return "held-long-enough";
    }

    @Override
    public boolean isWalked() {
        return false;
    }

    /** Whether anything that a trigger lead is joined to is read after a time that the kit does not say. */
    public static boolean leavesUnsaid(Fitting fitting) {
        return fitting.connected(Wish.WATCH_OPENINGS).stream()
                .anyMatch(connect -> input(fitting, connect)
                        .filter(input -> input.readsAfter().isEmpty())
                        .isPresent());
    }

    /** The leads that may miss an opening for lack of time while another lead surely does not: they prove nothing of it. */
    static List<LeadId> tooSlow(Fitting fitting, OperableId opening) {
        List<Reader> readers = readers(fitting, opening);
        return readers.stream().allMatch(Reader::mayMiss)
                ? List.of()
                : readers.stream().filter(Reader::mayMiss).map(Reader::lead).toList();
    }

    @Override
    public List<Claimed> in(Fitting fitting) {
        List<Claimed> all = new ArrayList<>();
        if (fitting.isWanted(Wish.WATCH_OPENINGS)) {
            for (OperableId opening : fitting.brief().order().watched()) {
                claimed(fitting, opening, readers(fitting, opening)).ifPresent(all::add);
            }
        }
        return all;
    }

    /** The lead with the most time to spare decides; where the kit says nothing of a lead that may be the one, nothing is decided. */
    private Optional<Claimed> claimed(Fitting fitting, OperableId opening, List<Reader> readers) {
        Optional<Reader> best =
                readers.stream().filter(Reader::isSaid).max(Comparator.comparingDouble(Reader::leastToSpareSeconds));
        if (best.isPresent() && best.get().toSpareSeconds() >= 0) {
            return Optional.of(decided(fitting, opening, best.get()));
        }
        Optional<Reader> unsaid =
                readers.stream().filter(reader -> !reader.isSaid()).findFirst();
        boolean isDimmed = readers.stream().anyMatch(reader -> reader.pulsed().isPresent());
        if (unsaid.isPresent()) {
            return best.isPresent() || isDimmed
                    ? Optional.of(ByFigures.missing(id(opening), statement(opening), ask(unsaid.get())))
                    : Optional.empty();
        }
        return best.map(reader -> decided(fitting, opening, reader));
    }

    private String id(OperableId opening) {
        return name() + " " + opening;
    }

    private static Phrase statement(OperableId opening) {
        return Phrase.of("claim.held-long-enough", opening);
    }

    private static Measurement ask(Reader reader) {
        return ByFigures.askFor("reads-after " + reader.lead(), Phrase.of("measure.reads-after", reader.lead()));
    }

    private Claimed decided(Fitting fitting, OperableId opening, Reader reader) {
        Figure<Seconds> reads = reader.readsAfter().orElseThrow();
        Situation at = ByFigures.atRest(ControllerState.ARMED, Moment.SETTLED);
        List<ByFigures.Used> figures = new ArrayList<>();
        figures.add(new ByFigures.Used(reads, ask(reader)));
        reader.pulsed()
                .ifPresent(pulsed -> figures.add(new ByFigures.Used(
                        pulsed, new Measurement("pulses-of " + opening, Phrase.of("measure.pulsed", reader.lead())))));
        Phrase step = reader.pulsed().isPresent()
                ? Phrase.of("step.open-and-leave", opening)
                : Phrase.of("step.open-briefly", opening, SHORTEST_OPENING);
        return new ByFigures(id(opening), statement(opening), figures, true)
                .decide(
                        margin(reader.toSpareSeconds(), reader.heldSeconds(), reads.typical()),
                        margin(reader.leastToSpareSeconds(), reader.leastHeldSeconds(), reads.high()),
                        at,
                        ByFigures.steps(fitting, at, step),
                        new Observation(
                                Phrase.of("meter.held", reader.lead()), new Seconds(reader.heldSeconds()).toString()));
    }

    private static Margin margin(double toSpare, double held, Seconds reads) {
        return new Margin(
                toSpare, "s", Phrase.of("margin.held", new Seconds(held)), Phrase.of("margin.read-after", reads));
    }

    /** What reads an opening: a lead whose circuit follows it, or that has an added pin there; of several wires the one that holds least. */
    private static List<Reader> readers(Fitting fitting, OperableId opening) {
        List<Reader> readers = new ArrayList<>();
        for (Hookup.Connect connect : fitting.connected(Wish.WATCH_OPENINGS)) {
            input(fitting, connect)
                    .flatMap(input -> wires(fitting, connect, opening)
                            .map(pulsed -> new Reader(connect.lead(), input.readsAfter(), pulsed))
                            .min(Comparator.comparingDouble(Reader::leastHeldSeconds)))
                    .ifPresent(readers::add);
        }
        return readers;
    }

    /** The wires by which a lead is told of an opening, each with how it is dimmed. */
    private static Stream<Optional<Figure<Seconds>>> wires(
            Fitting fitting, Hookup.Connect connect, OperableId opening) {
        Stream<Optional<Figure<Seconds>>> circuits = connect.circuits().stream()
                .map(fitting.brief().sheet()::circuit)
                .filter(circuit -> circuit.follows().contains(opening))
                .map(Circuit::switching)
                .map(switching -> switching.pulsed());
        Stream<Optional<Figure<Seconds>>> pins = connect.parts().stream()
                .flatMap(id -> fitting.plan().findPart(id).stream())
                .filter(part ->
                        part instanceof AddedPart.PinSwitch pin && pin.opening().equals(opening))
                .map(pin -> Optional.empty());
        return Stream.concat(circuits, pins);
    }

    private static Optional<Port.Input> input(Fitting fitting, Hookup.Connect connect) {
        boolean isTrigger = fitting.brief().kit().behaviour().triggers().contains(connect.lead());
        return isTrigger && fitting.brief().kit().lead(connect.lead()).port() instanceof Port.Input input
                ? Optional.of(input)
                : Optional.empty();
    }
}
