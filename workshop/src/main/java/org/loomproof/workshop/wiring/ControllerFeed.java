package org.loomproof.workshop.wiring;

import java.util.Locale;

/** Whether the controller gets what it lives on. */
public enum ControllerFeed {
    /** Supply and ground are there. */
    WHOLE,
    /** Every supply lead is open at the controller: unplugged. */
    SUPPLY_LOST,
    /** Every ground lead is open at the controller. */
    GROUND_LOST,
    /** Every fuse in the controller's own supply is out. */
    FUSE_OUT;

    /** The word used in files and messages. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
