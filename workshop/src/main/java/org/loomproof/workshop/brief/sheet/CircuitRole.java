package org.loomproof.workshop.brief.sheet;

import java.util.Locale;

/** What a factory circuit is for. The list is closed; what fits nowhere is {@link #OTHER} with a note. */
public enum CircuitRole {
    CONSTANT_SUPPLY,
    IGNITION,
    SECOND_IGNITION,
    ACCESSORY,
    STARTER,
    SECOND_STARTER,
    GROUND,
    DOOR_TRIGGER,
    HOOD_TRIGGER,
    TRUNK_TRIGGER,
    INTERIOR_LIGHT,
    PARKING_LAMP,
    HORN,
    LOCK,
    UNLOCK,
    LOCK_MOTOR_LEG,
    TRUNK_RELEASE,
    WINDOW,
    BRAKE,
    TACHOMETER,
    FUEL_PUMP,
    DATA,
    RESTRAINT,
    HIGH_VOLTAGE,
    OTHER;

    /** The word used in files, such as {@code door-trigger}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
