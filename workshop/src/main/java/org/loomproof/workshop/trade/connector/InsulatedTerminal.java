package org.loomproof.workshop.trade.connector;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;
import org.loomproof.workshop.trade.wire.Copper;

/**
 * The three sizes of insulated terminals, splices and taps, by the colour of their sleeve. Common practice, no published
 * source. A terminal is chosen by the conductor crimped into it, a tap by the conductor it is put on: the two differ.
 */
public enum InsulatedTerminal {
    RED,
    BLUE,
    YELLOW;

    private static final Table TABLE = Table.read(InsulatedTerminal.class, "terminals.csv");

    /** The size for a conductor, if there is one: gauges by the printed range, others by the nearest gauge. */
    public static Optional<InsulatedTerminal> find(SquareMillimetres conductor) {
        return Stream.of(values()).filter(t -> t.takes(conductor)).findFirst();
    }

    /** The thinnest gauge it takes. */
    public int thinnest() {
        return gauge("thinnest_awg");
    }

    /** The thickest gauge it takes. */
    public int thickest() {
        return gauge("thickest_awg");
    }

    /** The word used in messages. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** A size between two gauges counts as the nearer one, by the ratio of areas. */
    private boolean takes(SquareMillimetres conductor) {
        return conductor.value() >= halfway(thinnest() + 2, thinnest())
                && conductor.value() < halfway(thickest(), thickest() - 2);
    }

    private static double halfway(int thinner, int thicker) {
        return Math.sqrt(Copper.area(thinner).value() * Copper.area(thicker).value());
    }

    private int gauge(String column) {
        Row row = TABLE.findRow("colour", word())
                .orElseThrow(() -> new IllegalStateException("terminals.csv has no " + word()));
        return (int) row.number(column);
    }
}
