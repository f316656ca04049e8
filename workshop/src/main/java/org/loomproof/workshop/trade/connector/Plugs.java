package org.loomproof.workshop.trade.connector;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;

/** The connectors that can be bought, the weakest contacts first. Common practice, no published source. */
public final class Plugs {

    private static final List<PlugType> TYPES = Table.read(Plugs.class, "plugs.csv").listRows().stream()
            .flatMap(Plugs::types)
            .sorted(Comparator.comparingDouble((PlugType type) -> type.carries().value())
                    .thenComparingInt(PlugType::poles))
            .toList();

    private Plugs() {}

    private static Stream<PlugType> types(Row row) {
        return Arrays.stream(row.text("poles").split(" "))
                .map(poles -> new PlugType(
                        row.number("contact_mm"),
                        Integer.parseInt(poles),
                        new Amps(row.number("carries_a")),
                        new SquareMillimetres(row.number("thickest_mm2"))));
    }

    /** All of them, the weakest contacts first, of those the fewest poles first. */
    public static List<PlugType> listPlugs() {
        return TYPES;
    }

    /** The weakest contact that bears the current and takes the conductor; the strongest there is where none does. */
    public static Amps contactFor(Amps carries, SquareMillimetres conductor) {
        return TYPES.stream()
                .filter(type -> type.carries().value() >= carries.value())
                .filter(type -> type.thickest().value() >= conductor.value())
                .findFirst()
                .orElse(TYPES.getLast())
                .carries();
    }

    /** The most wires that one connector of such contacts takes. */
    public static int mostPoles(Amps contact) {
        return TYPES.stream()
                .filter(type -> type.carries().equals(contact))
                .mapToInt(PlugType::poles)
                .max()
                .orElse(1);
    }

    /** The smallest connector of such contacts that takes so many wires; the largest there is where none does. */
    public static PlugType of(Amps contact, int wires) {
        List<PlugType> alike = TYPES.stream()
                .filter(type -> type.carries().value() >= contact.value())
                .toList();
        return alike.stream()
                .filter(type -> type.poles() >= wires)
                .findFirst()
                .orElse(alike.isEmpty() ? TYPES.getLast() : alike.getLast());
    }
}
