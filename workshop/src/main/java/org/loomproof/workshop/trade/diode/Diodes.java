package org.loomproof.workshop.trade.diode;

import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.table.Table;

/** The diodes that can be bought, smallest first. */
public final class Diodes {
    private static final List<DiodeType> TYPES = Table.read(Diodes.class, "diodes.csv").listRows().stream()
            .map(row -> new DiodeType(
                    row.text("name"),
                    new Volts(row.number("reverse_v")),
                    new Amps(row.number("average_a")),
                    new Volts(row.number("forward_v")),
                    new Amps(row.number("surge_a"))))
            .toList();

    private Diodes() {}

    /** All of them, smallest current first and then smallest reverse voltage. */
    public static List<DiodeType> listDiodes() {
        return TYPES;
    }

    /** The diode of that type number. */
    public static Optional<DiodeType> find(String name) {
        return TYPES.stream().filter(t -> t.name().equals(name)).findFirst();
    }

    /** The smallest diode that carries the current and blocks the voltage. */
    public static Optional<DiodeType> findFor(Amps average, Volts reverse) {
        return TYPES.stream()
                .filter(t -> t.average().value() >= average.value())
                .filter(t -> t.reverse().value() >= reverse.value())
                .findFirst();
    }
}
