package org.loomproof.workshop.trade.supply;

import java.util.Locale;
import org.loomproof.workshop.quantity.Volts;

/** Volts at the battery's posts. Common practice, no published source. */
public enum SupplyPoint {
    /** The lowest during a start. */
    CRANKING(9.0),
    /** A tired battery. */
    LOW(11.6),
    /** Charged, key out. */
    REST(12.6),
    /** Engine running. */
    CHARGING(13.8),
    /** The highest in normal use. */
    HIGH(14.8);

    private final double volts;

    SupplyPoint(double volts) {
        this.volts = volts;
    }

    /** Volts between the battery's posts. */
    public Volts volts() {
        return new Volts(volts);
    }

    /** The word used in files and messages. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
