package org.loomproof.workshop.planner.explain;

import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.words.Phrase;

/** Names of things within sentences. */
public final class Terms {

    private Terms() {}

    /** A circuit's role. */
    public static Phrase role(CircuitRole role) {
        return Phrase.of("term.circuit." + role.word());
    }

    /** A lead's role. */
    public static Phrase leadRole(LeadRole role) {
        return Phrase.of("term.lead." + role.word());
    }

    /** A wish. */
    public static Phrase wish(Wish wish) {
        return Phrase.of("term.wish." + wish.word());
    }

    /** How sure an entry is. */
    public static Phrase certainty(Certainty certainty) {
        return switch (certainty) {
            case VERIFIED -> Phrase.of("term.certainty.verified");
            case STATED -> Phrase.of("term.certainty.stated");
            case GUESSED -> Phrase.of("term.certainty.guessed");
            case ASSUMED -> Phrase.of("term.certainty.assumed");
        };
    }

    /** What a port is. */
    public static Phrase port(Port port) {
        return switch (port) {
            case Port.Supply s -> Phrase.of("term.port.supply");
            case Port.Ground g -> Phrase.of("term.port.ground");
            case Port.Input in ->
                in.active() == Port.Active.LOW ? Phrase.of("term.port.input-low") : Phrase.of("term.port.input-high");
            case Port.LowSide out -> Phrase.of("term.port.low-side");
            case Port.HighSide out -> Phrase.of("term.port.high-side");
            case Port.ToExtra(var extra) -> Phrase.of("term.port.to-extra", extra);
        };
    }

    /** Where a circuit's wire is found, or that the sheet does not say. */
    public static Phrase whereOf(Circuit circuit) {
        String panel = circuit.where().panel();
        return panel.isBlank() ? Phrase.of("term.where.not-said") : Phrase.of("term.where", panel);
    }

    /** The positions in which a wire of that role must be read before it is told from others. */
    public static Phrase positions(CircuitRole role) {
        return switch (role) {
            case CONSTANT_SUPPLY,
                    IGNITION,
                    SECOND_IGNITION,
                    ACCESSORY,
                    STARTER,
                    SECOND_STARTER,
                    FUEL_PUMP,
                    TACHOMETER -> Phrase.of("term.positions.key");
            case DOOR_TRIGGER, HOOD_TRIGGER, TRUNK_TRIGGER, INTERIOR_LIGHT -> Phrase.of("term.positions.openings");
            case PARKING_LAMP -> Phrase.of("term.positions.lamps");
            case LOCK, UNLOCK, LOCK_MOTOR_LEG, ALARM_ARM, ALARM_DISARM -> Phrase.of("term.positions.locks");
            case GROUND, HORN, TRUNK_RELEASE, WINDOW, BRAKE, DATA, RESTRAINT, HIGH_VOLTAGE, OTHER ->
                Phrase.of("term.positions.switch");
        };
    }
}
