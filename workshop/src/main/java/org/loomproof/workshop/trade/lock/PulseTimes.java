package org.loomproof.workshop.trade.lock;

import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.trade.table.Table;

/** The shortest pulses with which locks and latches still reach their ends. */
public final class PulseTimes {
    private static final Table TABLE = Table.read(PulseTimes.class, "pulses.csv");

    private PulseTimes() {}

    /** For lock motors, and for relays and modules that work them. */
    public static Seconds motors() {
        return least("motors");
    }

    /** For a pump that moves all locks, and for a module whose wire is held. */
    public static Seconds held() {
        return least("held");
    }

    /** For the latch of a boot. */
    public static Seconds latch() {
        return least("latch");
    }

    private static Seconds least(String what) {
        return new Seconds(TABLE.findRow("what", what)
                .orElseThrow(() -> new IllegalStateException("pulses.csv has no " + what))
                .number("least_s"));
    }
}
