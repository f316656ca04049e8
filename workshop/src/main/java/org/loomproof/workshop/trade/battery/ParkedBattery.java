package org.loomproof.workshop.trade.battery;

import java.util.List;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;

/** What a starter battery gives in the cold, and what may be taken from it while the car stands. */
public final class ParkedBattery {
    private static final Table DRAIN = Table.read(ParkedBattery.class, "drain.csv");
    private static final List<Row> COLD =
            Table.read(ParkedBattery.class, "cold.csv").listRows();

    private ParkedBattery() {}

    /**
     * Cranking power of a full battery as a share of its power at 26.7 °C: on straight lines between the published points, and
     * level beyond them.
     */
    public static double crankingPower(Celsius temperature) {
        double at = temperature.value();
        Row colder = COLD.getFirst();
        for (Row warmer : COLD) {
            if (at <= warmer.number("celsius")) {
                return warmer.equals(colder) ? warmer.number("share") : between(colder, warmer, at);
            }
            colder = warmer;
        }
        return colder.number("share");
    }

    private static double between(Row colder, Row warmer, double at) {
        double along = (at - colder.number("celsius")) / (warmer.number("celsius") - colder.number("celsius"));
        return colder.number("share") + along * (warmer.number("share") - colder.number("share"));
    }

    /** The share of the rated capacity that may be taken in mild weather, by age in years. */
    public static double usableShare(double ageYears) {
        return value(ageYears > value("old-after") ? "usable-share-old" : "usable-share");
    }

    /** The temperature down to which a full sound battery is taken to crank its engine. */
    public static Celsius coldestStart() {
        return new Celsius(value("just-cranks-at"));
    }

    /** The hours in which a battery is emptied at the current its capacity is printed for. */
    public static double ratedHours() {
        return value("rated-hours");
    }

    /** How much sooner a battery is empty under a large current: the exponent of Peukert's law. */
    public static double peukertExponent() {
        return value("peukert-exponent");
    }

    private static double value(String quantity) {
        return DRAIN.findRow("quantity", quantity)
                .orElseThrow(() -> new IllegalStateException("drain.csv has no " + quantity))
                .number("value");
    }
}
