package org.loomproof.workshop.prover.claim;

import org.loomproof.workshop.prover.claim.Triggers.Trigger;
import org.loomproof.workshop.prover.explore.Reading;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.wiring.InputReach;
import org.loomproof.workshop.words.Phrase;

/** What is said of a trigger input. */
final class TriggerWords {

    private TriggerWords() {}

    /** The volts within which it is read as active. */
    static Phrase active(Trigger trigger, Reading reading) {
        InputReach reach = trigger.reach(reading);
        return switch (trigger.active()) {
            case LOW -> Phrase.of("margin.input-low", new Volts(reach.lowBelow()));
            case HIGH -> Phrase.of("margin.input-high", new Volts(reach.highAbove()));
        };
    }

    /** The volts within which it is read as resting. */
    static Phrase resting(Trigger trigger, Reading reading) {
        InputReach reach = trigger.reach(reading);
        return switch (trigger.active()) {
            case LOW -> Phrase.of("margin.input-high", new Volts(reach.highAbove()));
            case HIGH -> Phrase.of("margin.input-low", new Volts(reach.lowBelow()));
        };
    }

    /** The margin of a controller that lives on too little to read anything. */
    static Margin dead(Reading reading) {
        double alive = reading.aliveByVolts();
        return new Margin(
                alive,
                "V",
                Phrase.of("margin.controller-short", Shown.volts(-alive)),
                Phrase.of("margin.controller-least"));
    }

    static Observation observation(Trigger trigger, Reading reading) {
        return new Observation(
                Phrase.of("meter.at-lead", trigger.lead()),
                Shown.volts(trigger.volts(reading)).toString());
    }
}
