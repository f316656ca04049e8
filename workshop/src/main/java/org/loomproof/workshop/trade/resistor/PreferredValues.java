package org.loomproof.workshop.trade.resistor;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.trade.table.Table;

/** A series of preferred resistor values. Source: IEC 60063. */
public enum PreferredValues {
    /** 24 values a decade, 5 % parts. */
    E24,
    /** 96 values a decade, 1 % parts. */
    E96;

    private static final Table TABLE = Table.read(PreferredValues.class, "preferred.csv");

    /** From one ohm up to a megohm. */
    private static final int DECADES = 6;

    /** The values between 1 and 10, ascending. */
    public List<Double> listDecade() {
        return TABLE.listRows().stream()
                .filter(row -> row.text("series").equals(name()))
                .map(row -> row.number("value"))
                .toList();
    }

    /** What a part may be off, as a share. */
    public double tolerance() {
        return TABLE.listRows().stream()
                        .filter(row -> row.text("series").equals(name()))
                        .findFirst()
                        .orElseThrow()
                        .number("percent")
                / 100;
    }

    /** Every value from 1 Ω up to 10 MΩ, ascending. */
    public List<Ohms> list() {
        return IntStream.rangeClosed(0, DECADES)
                .boxed()
                .flatMap(decade -> listDecade().stream().map(v -> new Ohms(rounded(v * Math.pow(10, decade)))))
                .toList();
    }

    /** The value nearest in proportion. */
    public Ohms nearest(Ohms wanted) {
        return list().stream()
                .min(Comparator.comparingDouble(
                        (Ohms o) -> Math.abs(Math.log(o.value() / Math.max(wanted.value(), 1e-9)))))
                .orElseThrow();
    }

    /** The largest value not over what is wanted; the smallest of all when that is less than 1 Ω. */
    public Ohms largestUpTo(Ohms wanted) {
        List<Ohms> all = list();
        return all.stream()
                .filter(o -> o.value() <= wanted.value())
                .reduce((a, b) -> b)
                .orElse(all.getFirst());
    }

    /** Three figures are printed; powers of ten leave a little behind them. */
    private static double rounded(double ohms) {
        return Math.round(ohms * 1e3) / 1e3;
    }
}
