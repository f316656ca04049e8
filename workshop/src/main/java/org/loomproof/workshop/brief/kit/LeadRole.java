package org.loomproof.workshop.brief.kit;

import java.util.Locale;

/** What a lead of the kit is meant for. The list is closed; what fits nowhere is {@link #OTHER}. */
public enum LeadRole {
    SUPPLY,
    GROUND,
    IGNITION_SENSE,
    DOOR_INPUT,
    HOOD_INPUT,
    TRUNK_INPUT,
    SENSOR_INPUT,
    BRAKE_INPUT,
    STARTER_INTERRUPT,
    SIREN,
    HORN,
    LAMPS,
    INTERIOR_LIGHT,
    LOCK,
    UNLOCK,
    DRIVER_UNLOCK,
    TRUNK_RELEASE,
    WINDOW,
    INDICATOR,
    OVERRIDE_BUTTON,
    REMOTE_START,
    TRACKER,
    OTHER;

    /** Whether its output is made to switch filament lamps. */
    public boolean isForLamps() {
        return this == LAMPS || this == INTERIOR_LIGHT;
    }

    /** The word used in files, such as {@code door-input}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
