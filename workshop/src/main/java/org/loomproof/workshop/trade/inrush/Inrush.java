package org.loomproof.workshop.trade.inrush;

import java.util.Locale;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.trade.table.Table;

/** What bears a filament's rush of current or a motor's start, as a multiple of what it carries for long. */
public enum Inrush {
    /** A relay's contact, made or broken. */
    CONTACT,
    DIODE,
    FUSE,
    /** An output that its maker rates in lamps. */
    OUTPUT_FOR_LAMPS,
    /** Any other output: nobody says that it bears more. */
    OUTPUT;

    private static final Table TABLE = Table.read(Inrush.class, "inrush.csv");

    /** The most that it carries for an instant. */
    public Amps most(Amps lasting) {
        return new Amps(
                lasting.value() * multiple(name().toLowerCase(Locale.ROOT).replace('_', '-')));
    }

    /** What a motor draws while it stands still, as a multiple of what it draws at work. */
    public static double motorStart() {
        return multiple("motor-start");
    }

    private static double multiple(String what) {
        return TABLE.findRow("what", what)
                .orElseThrow(() -> new IllegalStateException("inrush.csv has no " + what))
                .number("multiple");
    }
}
