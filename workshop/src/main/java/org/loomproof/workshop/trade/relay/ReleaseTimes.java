package org.loomproof.workshop.trade.relay;

import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.trade.table.Table;

/** How long a relay goes on after its driver has let go of the coil, at the most. */
public final class ReleaseTimes {
    private static final Table TABLE = Table.read(ReleaseTimes.class, "release.csv");

    private ReleaseTimes() {}

    /** Inductance over resistance of a coil whose armature is pulled in, at 20 °C. */
    public static Seconds coil() {
        return most("coil");
    }

    /** From the current that lets go to contacts that have moved. */
    public static Seconds armature() {
        return most("armature");
    }

    private static Seconds most(String what) {
        return new Seconds(TABLE.findRow("what", what)
                .orElseThrow(() -> new IllegalStateException("release.csv has no " + what))
                .number("most_s"));
    }
}
