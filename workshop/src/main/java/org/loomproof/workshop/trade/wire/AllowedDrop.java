package org.loomproof.workshop.trade.wire;

import java.util.Locale;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.table.Table;

/** What a wire is for, as far as it decides how many volts its added part may lose. */
public enum AllowedDrop {
    SIGNAL,
    LAMP,
    LOCK_MOTOR,
    STARTER_CUT;

    private static final Table TABLE = Table.read(AllowedDrop.class, "allowed-drops.csv");

    /** How many volts the added wiring may lose. Common practice, no published source. */
    public Volts volts() {
        String circuit = name().toLowerCase(Locale.ROOT).replace('_', '-');
        return new Volts(TABLE.findRow("circuit", circuit)
                .orElseThrow(() -> new IllegalStateException("allowed-drops.csv has no " + circuit))
                .number("allowed_drop_v"));
    }
}
