package org.loomproof.workshop.trade.connector;

import java.util.Optional;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;
import org.loomproof.workshop.trade.wire.Copper;

/**
 * The least pull that a sound crimp withstands.
 *
 * @param newtons as the source prints it
 * @param pounds the original figure
 */
public record CrimpPull(double newtons, double pounds) {

    private static final Table TABLE = Table.read(CrimpPull.class, "crimp-pull.csv");

    /** Two areas this close are one gauge. */
    private static final double SAME_SIZE = 0.005;

    /** For a conductor: its gauge, or the next thinner one listed; none for what is thinner than any. */
    public static Optional<CrimpPull> find(SquareMillimetres conductor) {
        return TABLE.listRows().stream()
                .filter(row -> area(row) <= conductor.value() * (1 + SAME_SIZE))
                .reduce((thinner, thicker) -> thicker)
                .map(row -> new CrimpPull(row.number("newton"), row.number("pound_force")));
    }

    private static double area(Row row) {
        return Copper.area((int) row.number("awg")).value();
    }
}
