package org.loomproof.workshop.brief.sheet;

import java.util.Locale;

/** What a factory circuit is for. The list is closed; what fits nowhere is {@link #OTHER} with a note. */
public enum CircuitRole {
    CONSTANT_SUPPLY(Kind.FEED),
    IGNITION(Kind.KEY_FEED),
    SECOND_IGNITION(Kind.KEY_FEED),
    ACCESSORY(Kind.KEY_FEED),
    STARTER(Kind.START_WIRE),
    SECOND_STARTER(Kind.START_WIRE),
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
    ALARM_ARM,
    ALARM_DISARM,
    TRUNK_RELEASE,
    WINDOW,
    BRAKE,
    TACHOMETER,
    FUEL_PUMP,
    DATA,
    RESTRAINT,
    HIGH_VOLTAGE,
    OTHER;

    /** What sort of wire a role stands for, as far as a sheet may contradict itself about it. */
    public enum Kind {
        /** Fed whatever the key does. */
        FEED,
        /** Fed by the key. */
        KEY_FEED,
        /** Made active by the key to start the engine, at whichever pole. */
        START_WIRE,
        /** Any other. */
        PLAIN
    }

    private final Kind kind;

    CircuitRole() {
        this(Kind.PLAIN);
    }

    CircuitRole(Kind kind) {
        this.kind = kind;
    }

    /** The sort of wire. */
    public Kind kind() {
        return kind;
    }

    /** The word used in files, such as {@code door-trigger}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
