package org.loomproof.workshop.trade.wire;

import java.util.List;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;

/** What a conductor alone in free air may carry for long, by the temperature its insulation bears. */
public final class Ampacity {

    /** The air that the table is for. */
    public static final Celsius AMBIENT = new Celsius(30);

    private static final List<Row> ROWS =
            Table.read(Ampacity.class, "ampacity.csv").listRows();
    private static final List<Integer> CLASSES = List.of(60, 75, 80, 90, 105, 125, 200);

    private Ampacity() {}

    /**
     * The current for a conductor, by the copper that is really in it: on a straight line between the table's gauges in
     * logarithms of area and current, and on the last such line beyond them.
     *
     * @param insulation what the insulation bears; the table's next lower class is taken
     * @throws IllegalArgumentException for insulation that bears less than 60 °C
     */
    public static Amps inFreeAir(SquareMillimetres size, Celsius insulation) {
        String column = "c"
                + CLASSES.stream()
                        .filter(c -> c <= insulation.value())
                        .reduce((lower, higher) -> higher)
                        .orElseThrow(() -> new IllegalArgumentException("no figures for insulation of " + insulation));
        double copper = Copper.area(Conductors.ohmsPerMetre(size)).value();
        int right = 1;
        while (right < ROWS.size() - 1 && area(ROWS.get(right)) < copper) {
            right++;
        }
        Row thin = ROWS.get(right - 1);
        Row thick = ROWS.get(right);
        double slope = Math.log(thick.number(column) / thin.number(column)) / Math.log(area(thick) / area(thin));
        return new Amps(thin.number(column) * Math.pow(copper / area(thin), slope));
    }

    private static double area(Row row) {
        return Copper.area((int) row.number("awg")).value();
    }
}
