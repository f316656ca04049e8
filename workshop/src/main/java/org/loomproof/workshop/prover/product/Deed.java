package org.loomproof.workshop.prover.product;

import org.loomproof.workshop.wiring.ControllerFeed;

/** What brings the controller from one state to another. */
enum Deed {
    ARM,
    AGAIN,
    DISARM,
    OVERRIDE,
    BLOW,
    FEED_SUPPLY_LOST,
    FEED_GROUND_LOST,
    FEED_FUSE_OUT,
    FEED_WHOLE,
    PULSES_OVER,
    FLASH,
    ARMING_OVER,
    WARNING_OVER,
    SOUNDING_OVER,
    SLEEPS,
    WAKES,
    NOTICES,
    IS_QUIET_AGAIN;

    /** The loss of a feed, or its return. */
    static Deed of(ControllerFeed feed) {
        return switch (feed) {
            case SUPPLY_LOST -> FEED_SUPPLY_LOST;
            case GROUND_LOST -> FEED_GROUND_LOST;
            case FUSE_OUT -> FEED_FUSE_OUT;
            case WHOLE -> FEED_WHOLE;
        };
    }
}
