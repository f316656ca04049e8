package org.loomproof.workshop.planner.rule;

import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.planner.explain.Measurements;
import org.loomproof.workshop.planner.survey.Found;
import org.loomproof.workshop.trade.lock.PulseTimes;
import org.loomproof.workshop.words.Phrase;

/**
 * One lock wire whose switch stays as it is put, such as the knob in the driver's door. When the pulse is over the car sees the
 * switch again: it must have moved with the locks meanwhile, and the pulse must have lasted until they were through.
 */
record HeldWire(Job job, Wish wish, List<Lead> pair, List<Circuit> wires) {

    /** What stands against working it; empty where nothing does, or where its switch comes back by itself. */
    Optional<Option> objection() {
        Optional<Operable> knob = wires.stream()
                .flatMap(wire -> wire.follows().stream())
                .map(job.brief().sheet()::operable)
                .filter(Operable::staysAsPut)
                .findFirst();
        return knob.flatMap(this::unmoved).or(() -> knob.flatMap(k -> tooShort()));
    }

    private Optional<Option> unmoved(Operable knob) {
        if (knob.movesWithLocks().isEmpty()) {
            Found.Waiting waiting = new Found.Waiting(
                    Measurements.knobOf(knob),
                    Phrase.of("hold.knob", wires.stream().map(Circuit::id).toList(), knob.id()));
            return Optional.of(Option.of(Aside.allHeld(pair, wish, waiting)));
        }
        return knob.movesWithLocks().get()
                ? Optional.empty()
                : Optional.of(refused(Phrase.of("refuse.knob-stays", knob.id()), Phrase.of("possible.knob-stays")));
    }

    /** Where the wire works a pump itself, a pulse that surely ends before the pump does. */
    private Optional<Option> tooShort() {
        boolean pump = wires.stream()
                .flatMap(wire -> wire.paths().stream())
                .flatMap(List::stream)
                .anyMatch(PathStep.Load.class::isInstance);
        return pair.stream()
                .filter(lead -> pump)
                .flatMap(lead -> lead
                        .port()
                        .pulse()
                        .filter(lasts ->
                                lasts.high().value() < PulseTimes.held().value())
                        .map(lasts -> refused(
                                Phrase.of("refuse.pulse-too-short", lead.id(), lasts.high(), PulseTimes.held()),
                                Phrase.of("possible.pulse-too-short", PulseTimes.held())))
                        .stream())
                .findFirst();
    }

    private Option refused(Phrase because, Phrase possibleIf) {
        return Option.refused(new Refusal(wish, because, possibleIf), Aside.allRefused(pair, wish));
    }
}
