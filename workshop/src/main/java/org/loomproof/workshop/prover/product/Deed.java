package org.loomproof.workshop.prover.product;

import java.util.Locale;
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

    /** The word used in messages, such as {@code arming-over}. */
    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Whether a person does it; the others come with time or at once by themselves. */
    boolean isByHand() {
        return compareTo(FEED_WHOLE) <= 0;
    }
}
