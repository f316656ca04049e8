package org.loomproof.workshop.trade.terminal;

import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;

/**
 * Terminal numbers. The DIN list names relay contacts otherwise than cube relays do, so a cube relay's five terminals are
 * kept apart and the DIN numbers 87 and 87b are left out.
 */
public final class Terminals {
    private static final List<Terminal> DIN = Table.read(Terminals.class, "din72552.csv").listRows().stream()
            .map(row -> terminal(row, row.text("group")))
            .toList();
    private static final List<Terminal> CUBE_RELAY = Table.read(Terminals.class, "cube-relay.csv").listRows().stream()
            .map(row -> terminal(row, "relay"))
            .toList();

    private Terminals() {}

    /** The numbers of the DIN list, in its order. */
    public static List<Terminal> listDin() {
        return DIN;
    }

    /** The five terminals of a changeover cube relay: 30, 87, 87a, 85, 86. */
    public static List<Terminal> listCubeRelay() {
        return CUBE_RELAY;
    }

    /** The terminal of that number in the DIN list. */
    public static Optional<Terminal> find(String number) {
        return DIN.stream().filter(t -> t.number().equals(number)).findFirst();
    }

    private static Terminal terminal(Row row, String group) {
        return new Terminal(row.text("terminal"), group, row.text("meaning"));
    }
}
