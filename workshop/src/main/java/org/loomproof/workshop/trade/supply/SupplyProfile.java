package org.loomproof.workshop.trade.supply;

import java.util.List;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.table.Table;

/**
 * Volts at the battery's posts in straight pieces, as a standard publishes them.
 *
 * @param corners times rising
 */
public record SupplyProfile(List<Corner> corners) {

    /** The engine is cranked with a sound battery: ISO 16750-2, level I. */
    public static final SupplyProfile STARTING = of("starting");

    /** A charging generator loses its battery, its volts held by a clamp of its own: ISO 16750-2, test B. */
    public static final SupplyProfile LOAD_DUMP = of("load-dump");

    /** A point of the line. */
    public record Corner(Seconds at, Volts volts) {}

    public SupplyProfile {
        corners = List.copyOf(corners);
    }

    private static SupplyProfile of(String name) {
        return new SupplyProfile(Table.read(SupplyProfile.class, "profiles.csv").listRows().stream()
                .filter(row -> row.text("profile").equals(name))
                .map(row -> new Corner(new Seconds(row.number("second")), new Volts(row.number("volts"))))
                .toList());
    }

    /** When it is over. */
    public Seconds length() {
        return corners.getLast().at();
    }

    /** What a battery connected the wrong way round gives. */
    public static Volts reversed() {
        return new Volts(Table.read(SupplyProfile.class, "reversed.csv")
                .findRow("what", "reversed")
                .orElseThrow()
                .number("volts"));
    }
}
