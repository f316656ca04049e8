package org.loomproof.workshop.brief.order;

import java.util.Locale;

/** What a customer may ask for, those that will be refused included. */
public enum Wish {
    /** The kit's own feed, ground and sensing: no one asks for it, everything needs it. */
    BASICS,
    WATCH_OPENINGS,
    STARTER_INTERRUPT,
    SIREN,
    HORN,
    SECOND_SOUNDER,
    LAMPS,
    INTERIOR_LIGHT,
    LOCKS,
    /** Doors without a lock motor get an actuator that follows the others. */
    LOCK_ACTUATORS,
    TRUNK_RELEASE,
    WINDOWS,
    SHOCK_SENSOR,
    FURTHER_SENSORS,
    INDICATOR,
    OVERRIDE_BUTTON,
    REMOTE_START,
    ENGINE_STOP_WHILE_MOVING,
    IGNITION_OR_PUMP_CUT,
    TRACKER;

    /** The word used in files, such as {@code starter-interrupt}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
