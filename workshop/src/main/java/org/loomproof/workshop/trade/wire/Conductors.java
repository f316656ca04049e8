package org.loomproof.workshop.trade.wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;

/** The sizes of wire the trade knows, thinnest first, and what a metre of any size resists. */
public final class Conductors {
    /** Two areas this close are one size: gauge and metric sizes lie further apart than this everywhere. */
    private static final double SAME_SIZE = 0.005;

    private static final double STRAND_SHARE = Copper.value("strand-share");
    private static final List<Metric> TABLE = table();
    private static final List<Conductor> METRIC =
            TABLE.stream().map(Metric::size).toList();
    private static final List<Conductor> GAUGES = gauges();

    private Conductors() {}

    /** Metric sizes, thinnest first. */
    public static List<Conductor> listMetric() {
        return METRIC;
    }

    /** American wire gauges, thinnest first. */
    public static List<Conductor> listGauges() {
        return GAUGES;
    }

    /** The size whose area is meant, metric or gauge. */
    public static Optional<Conductor> find(SquareMillimetres area) {
        return java.util.stream.Stream.concat(METRIC.stream(), GAUGES.stream())
                .filter(c -> isSame(c.area(), area))
                .findFirst();
    }

    /**
     * The largest fuse that may protect a conductor: that of its size, else of the next thinner size. A conductor thinner than
     * any size listed bears less than the thinnest in the proportion of their areas.
     */
    public static Amps fuseCeiling(SquareMillimetres area) {
        Conductor thinnest = METRIC.getFirst();
        return find(area)
                .or(() -> METRIC.stream()
                        .filter(c -> c.area().value() <= area.value())
                        .reduce((thinner, thicker) -> thicker))
                .map(Conductor::fuseCeiling)
                .orElseGet(() -> new Amps(thinnest.fuseCeiling().value()
                        * area.value()
                        / thinnest.area().value()));
    }

    /**
     * The most a metre of a conductor resists at 20 °C. For a metric size its published limit; for a gauge its solid
     * copper; for anything between, copper in the least share of the nominal area that the published limits allow.
     */
    public static double ohmsPerMetre(SquareMillimetres area) {
        return find(area)
                .map(Conductor::ohmsPerMetre)
                .orElseGet(() -> isGauge(area)
                        ? Copper.ohmsPerMetre(area)
                        : Copper.ohmsPerMetre(new SquareMillimetres(area.value() * STRAND_SHARE)));
    }

    /**
     * The copper that is in a conductor for certain, which decides how warm it gets. For a metric size what the limit of
     * flexible cables leaves, which was read and is the looser one; for a gauge its solid copper; for anything between, the
     * least share of the nominal area.
     */
    public static SquareMillimetres leastCopper(SquareMillimetres area) {
        return TABLE.stream()
                .filter(metric -> isSame(metric.size().area(), area))
                .map(Metric::copper)
                .findFirst()
                .orElseGet(() -> isGauge(area) ? area : new SquareMillimetres(area.value() * STRAND_SHARE));
    }

    private static boolean isGauge(SquareMillimetres area) {
        for (int gauge = -3; gauge <= 40; gauge++) {
            if (isSame(Copper.area(gauge), area)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isSame(SquareMillimetres one, SquareMillimetres other) {
        return Math.abs(one.value() - other.value()) <= SAME_SIZE * one.value();
    }

    /** A metric size and the copper that is in it at the least. */
    private record Metric(Conductor size, SquareMillimetres copper) {
        static Metric of(Row row) {
            Conductor size = new Conductor(
                    row.text("nominal_mm2") + " mm²",
                    new SquareMillimetres(row.number("nominal_mm2")),
                    row.number("iso6722_mohm_per_m") / 1000,
                    new Amps(row.number("ceiling_a")),
                    row.text("bought").equals("yes"));
            return new Metric(size, Copper.area(row.number("iec60228_class5_mohm_per_m") / 1000));
        }
    }

    private static List<Metric> table() {
        return Table.read(Conductors.class, "metric.csv").listRows().stream()
                .map(Metric::of)
                .toList();
    }

    private static List<Conductor> gauges() {
        List<Conductor> sizes = new ArrayList<>();
        for (Row row : Table.read(Conductors.class, "awg.csv").listRows()) {
            SquareMillimetres area = Copper.area(Integer.parseInt(row.text("awg")));
            sizes.add(new Conductor(
                    row.text("awg") + " AWG",
                    area,
                    Copper.ohmsPerMetre(area),
                    new Amps(row.number("ceiling_a")),
                    row.text("bought").equals("yes")));
        }
        return List.copyOf(sizes);
    }
}
