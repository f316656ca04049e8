package org.loomproof.workshop.trade.relay;

import java.util.Locale;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.trade.table.Table;

/** What a contact switches, as far as it decides the rating it needs. */
public enum ContactDuty {
    RESISTIVE,
    LAMP,
    MOTOR,
    SOLENOID;

    private static final Table TABLE = Table.read(ContactDuty.class, "duty.csv");

    /** The rating a contact needs for a steady current of this kind of load. */
    public Amps rating(Amps steady) {
        String load = name().toLowerCase(Locale.ROOT);
        return new Amps(steady.value()
                * TABLE.findRow("load", load)
                        .orElseThrow(() -> new IllegalStateException("duty.csv has no " + load))
                        .number("multiple"));
    }
}
