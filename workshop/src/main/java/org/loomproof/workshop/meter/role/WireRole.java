package org.loomproof.workshop.meter.role;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.loomproof.workshop.brief.sheet.CircuitRole;

/** What a wire may turn out to be. */
public enum WireRole {
    CONSTANT(8, CircuitRole.CONSTANT_SUPPLY),
    GROUND(6, CircuitRole.GROUND),
    IGNITION(6, CircuitRole.IGNITION),
    SECOND_IGNITION(4, CircuitRole.SECOND_IGNITION),
    ACCESSORY(5, CircuitRole.ACCESSORY),
    STARTER(4, CircuitRole.STARTER),
    SECOND_STARTER(0.2, CircuitRole.SECOND_STARTER),
    DOOR_TRIGGER(9, CircuitRole.DOOR_TRIGGER),
    HOOD_TRIGGER(2, CircuitRole.HOOD_TRIGGER),
    TRUNK_TRIGGER(4, CircuitRole.TRUNK_TRIGGER),
    INTERIOR_LIGHT(3, CircuitRole.INTERIOR_LIGHT),
    PARKING_LAMP(6, CircuitRole.PARKING_LAMP),
    HORN(4, CircuitRole.HORN),
    LOCK(5, CircuitRole.LOCK),
    UNLOCK(5, CircuitRole.UNLOCK),
    /** Lock and unlock on one wire, told apart by resistance. */
    LOCK_STEPS(3, CircuitRole.LOCK, CircuitRole.UNLOCK),
    /** Lock and unlock on one wire, told apart by pole. */
    LOCK_EITHER_POLE(1, CircuitRole.LOCK, CircuitRole.UNLOCK),
    LOCK_MOTOR_LEG(5, CircuitRole.LOCK_MOTOR_LEG, CircuitRole.LOCK, CircuitRole.UNLOCK),
    TRUNK_RELEASE(3, CircuitRole.TRUNK_RELEASE),
    WINDOW(3, CircuitRole.WINDOW),
    BRAKE(4, CircuitRole.BRAKE),
    TACHOMETER(2, CircuitRole.TACHOMETER),
    FUEL_PUMP(2, CircuitRole.FUEL_PUMP),
    DATA(5, CircuitRole.DATA),
    RESTRAINT(0.5, CircuitRole.RESTRAINT, CircuitRole.HIGH_VOLTAGE),
    /** Leads nowhere, or to something that is unplugged. */
    DEAD(4),
    /** Something of which we have no model. */
    NONE_OF_THESE(5, CircuitRole.OTHER);

    private final double usualness;

    @SuppressWarnings("ImmutableEnumChecker") // List.of cannot be changed
    private final List<CircuitRole> circuits;

    WireRole(double usualness, CircuitRole... circuits) {
        this.usualness = usualness;
        this.circuits = List.of(circuits);
    }

    /**
     * How often somebody who looks for wires behind a dash lands on one, beside the others. Common practice, no published
     * source.
     */
    public double usualness() {
        return usualness;
    }

    /** The roles of a sheet that it may be entered under. */
    public List<CircuitRole> circuits() {
        return circuits;
    }

    /** What a circuit of the sheet may turn out to be, were its entry right. */
    public static List<WireRole> of(CircuitRole circuit) {
        return Arrays.stream(values())
                .filter(role -> role.circuits.contains(circuit))
                .toList();
    }

    /** True for a wire by which the engine is started. */
    public boolean isStart() {
        return this == STARTER || this == SECOND_STARTER;
    }

    /** The word used in files and messages, such as {@code door-trigger}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The role of that word, which must be one. */
    static WireRole ofWord(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
}
