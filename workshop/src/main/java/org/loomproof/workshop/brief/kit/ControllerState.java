package org.loomproof.workshop.brief.kit;

import java.util.Locale;

/** What the controller may be doing. */
public enum ControllerState {
    WITHOUT_SUPPLY,
    DISARMED,
    ARMING,
    ARMED,
    WARNING,
    SOUNDING,
    OVERRIDE;

    /** The word used in files, such as {@code without-supply}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
