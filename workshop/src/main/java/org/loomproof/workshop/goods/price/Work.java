package org.loomproof.workshop.goods.price;

import java.util.Locale;

/** What a technician does that takes time. */
public enum Work {
    CHECK_IN,
    BENCH_LEAD,
    TAP,
    CUT,
    ADDED_PART,
    CONNECTOR,
    SOUNDER,
    ACTUATOR,
    PIN_SWITCH,
    PANEL,
    FINAL_TEST,
    HAND_OVER;

    /** The word used in files, such as {@code final-test}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
