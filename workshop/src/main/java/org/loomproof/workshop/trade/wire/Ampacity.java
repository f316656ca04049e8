package org.loomproof.workshop.trade.wire;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;

/** What a conductor alone in free air may carry for long, by the temperature its insulation bears. */
public final class Ampacity {

    /** The air that the table is for. */
    public static final Celsius AMBIENT = new Celsius(30);

    private static final List<Integer> CLASSES = List.of(60, 75, 80, 90, 105, 125, 200);

    /** A gauge of the table: square millimetres of copper, and amps by the class of the insulation. */
    private record Gauge(double area, Map<Integer, Double> amps) {}

    private static final List<Gauge> GAUGES = Table.read(Ampacity.class, "ampacity.csv").listRows().stream()
            .map(Ampacity::gauge)
            .toList();

    private Ampacity() {}

    /**
     * The current for a conductor, by the copper that is in it for certain: on a straight line between the table's gauges in
     * logarithms of area and current, and on the last such line beyond them.
     *
     * @param insulation what the insulation bears; the table's next lower class is taken
     * @throws IllegalArgumentException for insulation that bears less than 60 °C
     */
    public static Amps inFreeAir(SquareMillimetres size, Celsius insulation) {
        Integer column = CLASSES.stream()
                .filter(c -> c <= insulation.value())
                .reduce((lower, higher) -> higher)
                .orElseThrow(() -> new IllegalArgumentException("no figures for insulation of " + insulation));
        double copper = Conductors.leastCopper(size).value();
        int right = 1;
        while (right < GAUGES.size() - 1 && GAUGES.get(right).area() < copper) {
            right++;
        }
        Gauge thin = GAUGES.get(right - 1);
        Gauge thick = GAUGES.get(right);
        double thinAmps = requireNonNull(thin.amps().get(column));
        double thickAmps = requireNonNull(thick.amps().get(column));
        double slope = Math.log(thickAmps / thinAmps) / Math.log(thick.area() / thin.area());
        return new Amps(thinAmps * Math.pow(copper / thin.area(), slope));
    }

    private static Gauge gauge(Row row) {
        return new Gauge(
                Copper.area((int) row.number("awg")).value(),
                CLASSES.stream().collect(Collectors.toMap(Function.identity(), each -> row.number("c" + each))));
    }
}
