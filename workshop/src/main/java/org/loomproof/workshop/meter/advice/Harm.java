package org.loomproof.workshop.meter.advice;

import org.loomproof.workshop.meter.evidence.Belief;
import org.loomproof.workshop.meter.role.WireModel;
import org.loomproof.workshop.meter.role.WireRole;

/**
 * Which tests could hurt which wires. Common practice, no published source: restraints are not touched with anything; nothing
 * loads a data wire; no current is sent into a body computer's line; a lamp is for power circuits alone.
 */
public final class Harm {

    /** A wire this unlikely to be one that would be hurt is tested: one in two hundred. */
    public static final double BEARABLE = 0.005;

    /** A wire this likely to belong to the restraints is left alone, a voltmeter included. */
    public static final double LEFT_ALONE = 0.05;

    private Harm() {}

    /** True when that done to such a wire could hurt a person, a module or a signal. */
    public static boolean hurts(MeterTest.Kind kind, WireModel wire) {
        boolean isData = wire.role() == WireRole.DATA;
        boolean isRestraint = wire.role() == WireRole.RESTRAINT;
        return switch (kind) {
            case VOLTS, ALTERNATING -> isRestraint;
            case RESISTOR -> isRestraint || isData || wire.role() == WireRole.TACHOMETER;
            case OHMS -> isRestraint || wire.isOfModule();
            case TEST_LAMP -> isRestraint || wire.isOfModule() || !isPower(wire.role());
        };
    }

    /** True when that may be done to a wire of which this much is known. */
    public static boolean isSafe(MeterTest.Kind kind, Belief belief) {
        if (belief.chance(WireRole.RESTRAINT) >= LEFT_ALONE) {
            return false;
        }
        if (kind == MeterTest.Kind.VOLTS || kind == MeterTest.Kind.ALTERNATING) {
            return true;
        }
        double hurt = 0;
        int at = 0;
        for (WireModel wire : belief.fleet().models()) {
            boolean hurts = hurts(kind, wire);
            for (int car = 0; car < wire.cars(); car++, at++) {
                hurt += hurts ? belief.weight(at) : 0;
            }
        }
        return hurt < BEARABLE;
    }

    private static boolean isPower(WireRole role) {
        return switch (role) {
            case CONSTANT, IGNITION, SECOND_IGNITION, ACCESSORY, PARKING_LAMP, BRAKE -> true;
            case GROUND,
                    STARTER,
                    SECOND_STARTER,
                    DOOR_TRIGGER,
                    HOOD_TRIGGER,
                    TRUNK_TRIGGER,
                    INTERIOR_LIGHT,
                    HORN,
                    LOCK,
                    UNLOCK,
                    LOCK_STEPS,
                    LOCK_EITHER_POLE,
                    LOCK_MOTOR_LEG,
                    TRUNK_RELEASE,
                    WINDOW,
                    TACHOMETER,
                    FUEL_PUMP,
                    DATA,
                    RESTRAINT,
                    DEAD,
                    NONE_OF_THESE -> false;
        };
    }
}
