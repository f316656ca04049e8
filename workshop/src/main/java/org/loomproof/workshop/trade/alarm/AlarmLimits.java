package org.loomproof.workshop.trade.alarm;

import org.loomproof.workshop.quantity.Decibels;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;

/** Limits of UN R116 for the sound and the light of a vehicle alarm. */
public final class AlarmLimits {
    private static final Table TABLE = Table.read(AlarmLimits.class, "limits.csv");

    /** Sound is measured so far in front of the sounder. */
    public static final Metres MEASURED_AT = new Metres(2);

    private AlarmLimits() {}

    /** The quietest a sounder may be. */
    public static Decibels quietest() {
        return new Decibels(row("sound").number("low"));
    }

    /** The loudest it may be. */
    public static Decibels loudest() {
        return new Decibels(row("sound").number("high"));
    }

    /** The shortest an alarm may sound. */
    public static Seconds shortest() {
        return new Seconds(row("lasting").number("low"));
    }

    /** The longest it may sound. */
    public static Seconds longest() {
        return new Seconds(row("lasting").number("high"));
    }

    /** The shortest its lamps may flash. */
    public static Seconds shortestLight() {
        return new Seconds(row("flashing").number("low"));
    }

    /** The longest they may flash. */
    public static Seconds longestLight() {
        return new Seconds(row("flashing").number("high"));
    }

    private static Row row(String quantity) {
        return TABLE.findRow("quantity", quantity)
                .orElseThrow(() -> new IllegalStateException("limits.csv has no " + quantity));
    }
}
