package org.loomproof.workshop.trade.threat;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;

/** One thing that somebody who sits in an armed car may do to start it. */
public sealed interface Threat {

    /** Its name in the list and in the message files. */
    String name();

    /** Two spots are bridged with a piece of wire. */
    record Bridge(String name, Spot one, Spot other) implements Threat {}

    /** What stands at the spot is unplugged or pulled, one at a time where there are several. */
    record TakeOut(String name, Thing thing) implements Threat {}

    /** Where a bridge may end. */
    enum Spot {
        /** The cut wire on the side of the ignition switch. */
        BEFORE_CUT,
        /** The cut wire on the side of the starter. */
        AFTER_CUT,
        /** Any wire that is always at the battery's plus. */
        PLUS
    }

    /** What may be taken out. */
    enum Thing {
        /** The controller, with all its plugs. */
        CONTROLLER,
        /** The controller's ground. */
        GROUND,
        /** Any fuse that the interrupt or the controller hangs on. */
        FUSES,
        /** Any relay that was added for the interrupt. */
        RELAYS
    }

    /** The stated list, in its order. */
    static List<Threat> list() {
        return Table.read(Threat.class, "threats.csv").listRows().stream()
                .map(Threat::of)
                .toList();
    }

    private static Threat of(Row row) {
        String name = row.text("threat");
        return switch (row.text("deed")) {
            case "join" -> new Bridge(name, known(Spot.values(), row, "one"), known(Spot.values(), row, "other"));
            case "take-out" -> new TakeOut(name, known(Thing.values(), row, "one"));
            default -> throw new IllegalStateException(row.where() + ": no deed " + row.text("deed"));
        };
    }

    private static <E extends Enum<E>> E known(E[] all, Row row, String column) {
        return Arrays.stream(all)
                .filter(each ->
                        each.name().toLowerCase(Locale.ROOT).replace('_', '-').equals(row.text(column)))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(row.where() + ": unknown " + row.text(column)));
    }
}
