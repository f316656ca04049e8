package org.loomproof.workshop.trade.relay;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;

/** The relays that can be bought, least contact rating first. */
public final class Relays {
    private static final List<RelayType> TYPES = Table.read(Relays.class, "relays.csv").listRows().stream()
            .map(Relays::type)
            .toList();
    private static final String USUAL = "cube-30";

    private Relays() {}

    /** All of them, least contact rating first. */
    public static List<RelayType> listRelays() {
        return TYPES;
    }

    /** The relay taken where nothing special is asked of it. */
    public static RelayType usual() {
        return find(USUAL).orElseThrow(() -> new IllegalStateException("relays.csv has no " + USUAL));
    }

    /** The relay of that name. */
    public static Optional<RelayType> find(String name) {
        return TYPES.stream().filter(t -> t.name().equals(name)).findFirst();
    }

    /** The least changeover relay whose break contact may carry the current. */
    public static Optional<RelayType> findForBreak(Amps current) {
        return TYPES.stream()
                .filter(t ->
                        t.breakRating().map(r -> r.value() >= current.value()).orElse(false))
                .findFirst();
    }

    /** The least changeover relay whose make contact may carry the current. */
    public static Optional<RelayType> findForMake(Amps current) {
        return TYPES.stream()
                .filter(t -> t.isChangeover() && t.makeRating().value() >= current.value())
                .findFirst();
    }

    private static RelayType type(Row row) {
        OptionalDouble breaks = row.findNumber("break_a");
        return new RelayType(
                row.text("name"),
                new Ohms(row.number("coil_ohm")),
                new Volts(row.number("pull_in_v")),
                new Volts(row.number("drop_out_v")),
                new Amps(row.number("make_a")),
                breaks.isPresent() ? Optional.of(new Amps(breaks.getAsDouble())) : Optional.empty(),
                new Ohms(row.number("contact_mohm") / 1000));
    }
}
