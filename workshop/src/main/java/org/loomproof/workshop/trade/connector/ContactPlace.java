package org.loomproof.workshop.trade.connector;

import java.util.Locale;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;

/** A kind of place where conductors meet, with what it usually resists. Common practice, no published source. */
public enum ContactPlace {
    PLUG_CONTACT,
    CRIMP,
    SOLDER_JOINT,
    FUSE_HOLDER,
    RELAY_SOCKET,
    GROUND_SCREW;

    private static final Table TABLE = Table.read(ContactPlace.class, "contacts.csv");

    /** The least, as new. */
    public Ohms low() {
        return ohms("low_mohm");
    }

    /** What is usually found. */
    public Ohms typical() {
        return ohms("typical_mohm");
    }

    /** The most that passes for sound. */
    public Ohms high() {
        return ohms("high_mohm");
    }

    private Ohms ohms(String column) {
        String place = name().toLowerCase(Locale.ROOT).replace('_', '-');
        Row row = TABLE.findRow("place", place)
                .orElseThrow(() -> new IllegalStateException("contacts.csv has no " + place));
        return new Ohms(row.number(column) / 1000);
    }
}
