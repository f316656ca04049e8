package org.loomproof.workshop.goods.shelf;

import java.util.Locale;

/** A tool to have at hand. */
public enum Tool {
    METER,
    PANEL_LEVERS,
    STRIPPER,
    SIDE_CUTTER,
    SOLDERING_IRON,
    HEAT_GUN,
    CRIMP_TOOL,
    DRILL,
    SPANNER,
    MARKER;

    /** The word used in message keys. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
