package org.loomproof.workshop.trade.connector;

import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.trade.table.Table;
import org.loomproof.workshop.trade.wire.Copper;

/** How a joint is made. */
public final class Workmanship {
    private static final Table TABLE = Table.read(Workmanship.class, "workmanship.csv");
    private static final int LAST_THIN_GAUGE = 20;
    private static final double MILLIMETRE = 0.001;

    private Workmanship() {}

    /** How much insulation comes off for a joint that is wrapped and soldered. */
    public static Metres wrappedStrip() {
        return new Metres(value("wrapped-strip") * MILLIMETRE);
    }

    /** The least that may show between insulation and barrel. */
    public static Metres leastGap() {
        return new Metres(value("gap-least") * MILLIMETRE);
    }

    /** The most that may show between insulation and barrel, by conductor. */
    public static Metres mostGap(SquareMillimetres conductor) {
        boolean thin = conductor.value() <= Copper.area(LAST_THIN_GAUGE).value() * 1.005;
        return new Metres(value(thin ? "gap-most-thin" : "gap-most-thick") * MILLIMETRE);
    }

    /** The share of the least strength that a test of a joint which stays in use may pull. */
    public static double retentionShare() {
        return value("retention-share");
    }

    /** The thickest conductor that is soldered in a car. */
    public static SquareMillimetres thickestSoldered() {
        return new SquareMillimetres(value("solder-thickest"));
    }

    private static double value(String quantity) {
        return TABLE.findRow("quantity", quantity)
                .orElseThrow(() -> new IllegalStateException("workmanship.csv has no " + quantity))
                .number("value");
    }
}
