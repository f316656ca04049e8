package org.loomproof.workshop.planner.explain;

import java.util.List;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.words.Phrase;

/** The measurements a hold may wait for. Each has a short stable name and says what to measure, and in which positions. */
public final class Measurements {

    private Measurements() {}

    /** Find a wire of that role and read its levels. */
    public static Measurement find(CircuitRole role) {
        return new Measurement(
                "find " + role.word(), Phrase.of("measure.find", Terms.role(role), Terms.positions(role)));
    }

    /** Find the wire that follows an opening. */
    public static Measurement findTriggerOf(OperableId opening) {
        return new Measurement("find trigger-of " + opening, Phrase.of("measure.find-trigger", opening));
    }

    /** Read the levels of a wire in all positions that matter. */
    public static Measurement levelsOf(Circuit circuit) {
        return new Measurement(
                "levels-of " + circuit.id(),
                Phrase.of("measure.levels", circuit.id(), Terms.positions(circuit.role()), Terms.whereOf(circuit)));
    }

    /** Tell apart several wires that are said to be the same. */
    public static Measurement whichOf(CircuitRole role, Iterable<?> circuits) {
        return new Measurement(
                "which-of " + role.word(),
                Phrase.of("measure.which", circuits, Terms.role(role), Terms.positions(role)));
    }

    /** Follow a wire: what feeds it, what it feeds. */
    public static Measurement pathOf(Circuit circuit) {
        return new Measurement(
                "path-of " + circuit.id(), Phrase.of("measure.path", circuit.id(), Terms.whereOf(circuit)));
    }

    /** Find a place of a wire where it may be joined. */
    public static Measurement accessTo(Circuit circuit) {
        return new Measurement("access-to " + circuit.id(), Phrase.of("measure.access", circuit.id()));
    }

    /** Find a place of a wire behind the last switch, where what works is on one side and all that switches on the other. */
    public static Measurement cutPlaceOf(Circuit circuit) {
        return new Measurement("cut-place-of " + circuit.id(), Phrase.of("measure.cut-place", circuit.id()));
    }

    /** Which leg of a lock motor leaves its rest for locking, and which for unlocking. */
    public static Measurement legsApart(List<Circuit> legs) {
        return new Measurement(
                "legs-of locks",
                Phrase.of("measure.legs-apart", legs.stream().map(Circuit::id).toList()));
    }

    /** Whether a switch that stays as it is put moves with the locks. */
    public static Measurement knobOf(Operable knob) {
        return new Measurement("knob-of " + knob.id(), Phrase.of("measure.knob", knob.id()));
    }

    /** Which openings work a wire. */
    public static Measurement openingsOf(Circuit circuit) {
        return new Measurement("openings-of " + circuit.id(), Phrase.of("measure.openings", circuit.id()));
    }

    /** The steps of a wire on which buttons are told apart by their resistance. */
    public static Measurement stepsOf(Circuit circuit) {
        return new Measurement("steps-of " + circuit.id(), Phrase.of("measure.steps", circuit.id()));
    }

    /** Find the wire between an opening's switch and the module that follows it. */
    public static Measurement pinSideOf(Circuit circuit, OperableId opening) {
        return new Measurement("pin-side-of " + circuit.id(), Phrase.of("measure.pin-side", circuit.id(), opening));
    }

    /** The current in a wire while it does its work. */
    public static Measurement currentOf(Circuit circuit) {
        return new Measurement(
                "current-of " + circuit.id(),
                Phrase.of("measure.current", circuit.id(), Terms.positions(circuit.role())));
    }

    /** What a lead of the kit is electrically. */
    public static Measurement portOf(Lead lead) {
        return new Measurement(
                "port-of " + lead.id(), Phrase.of("measure.port", lead.id(), Terms.leadRole(lead.role())));
    }
}
