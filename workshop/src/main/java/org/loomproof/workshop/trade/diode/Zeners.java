package org.loomproof.workshop.trade.diode;

import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.table.Table;

/** The zener diodes that can be bought, least volts first. */
public final class Zeners {
    private static final List<ZenerType> TYPES = Table.read(Zeners.class, "zeners.csv").listRows().stream()
            .map(row -> new ZenerType(
                    row.text("name"),
                    new Volts(row.number("volts")),
                    new Amps(row.number("test_a")),
                    new Ohms(row.number("slope_ohm")),
                    new Amps(row.number("carries_a"))))
            .toList();

    private Zeners() {}

    /** All of them, least volts first. */
    public static List<ZenerType> listZeners() {
        return TYPES;
    }

    /** The one of those volts. */
    public static Optional<ZenerType> find(Volts volts) {
        return TYPES.stream().filter(type -> type.volts().equals(volts)).findFirst();
    }
}
