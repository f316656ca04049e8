package org.loomproof.pages.bay;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.RelayPosition;
import org.loomproof.papers.schematic.LiveSchematic;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.prover.claim.Shown;
import org.loomproof.workshop.prover.explore.Reading;
import org.loomproof.workshop.prover.explore.Working;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.wiring.ControllerParts;
import org.loomproof.workshop.wiring.FactoryParts;
import org.loomproof.workshop.wiring.InputReach;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.wiring.Wired;
import org.loomproof.workshop.words.Phrase;

/** Goes round both vehicles with the meter, one thing after another. */
final class MeterRound {

    private final Wired wired;
    private final Optional<Reading> stock;
    private final Optional<Reading> fitted;
    private final Set<CircuitId> cut;

    /**
     * A round.
     *
     * @param wired the fitted vehicle
     * @param stock read; empty when it does not come to rest
     * @param fitted read; empty when it does not come to rest
     * @param cut the circuits whose wires are cut
     */
    MeterRound(Wired wired, Optional<Reading> stock, Optional<Reading> fitted, Set<CircuitId> cut) {
        this.wired = wired;
        this.stock = stock;
        this.fitted = fitted;
        this.cut = cut;
    }

    /** Everything that a meter reaches, in the order of sheet, plan and kit. */
    List<Metered> rows() {
        List<Metered> rows = new ArrayList<>();
        FactoryParts factory = wired.factory();
        for (CircuitId circuit : factory.before().keySet()) {
            if (cut.contains(circuit)) {
                rows.add(circuit(circuit, true, "pages.bay.at.circuit-before"));
                rows.add(circuit(circuit, false, "pages.bay.at.circuit-after"));
            } else {
                rows.add(circuit(circuit, true, "pages.bay.at.thing"));
            }
        }
        factory.loads()
                .forEach((id, reach) -> rows.add(both(
                        "load",
                        id.value(),
                        r -> across(r, r.wired().factory().loads().get(id)))));
        factory.inputs()
                .forEach((id, input) -> rows.add(both(
                        "input",
                        id.value(),
                        r -> input(r, r.wired().factory().inputs().get(id)))));
        wired.added()
                .parts()
                .forEach((id, reach) -> rows.add(both(
                        "part",
                        id.value(),
                        r -> across(r, r.wired().added().parts().get(id)))));
        wired.added()
                .wires()
                .forEach((id, reach) -> rows.add(both(
                        "wire",
                        id.value(),
                        r -> along(r, r.wired().added().wires().get(id)))));
        ControllerParts controller = wired.controller().orElseThrow();
        controller
                .leads()
                .forEach((lead, node) -> rows.add(both(
                        "lead",
                        lead.value(),
                        r -> r.wired()
                                .controller()
                                .flatMap(c -> Optional.ofNullable(c.inputs().get(lead))
                                        .map(input -> input(r, input))
                                        .orElseGet(() -> at(r, node))))));
        return rows;
    }

    private Metered circuit(CircuitId circuit, boolean before, String key) {
        Function<Reading, Optional<Meter>> reading = r -> at(
                r,
                before
                        ? r.wired().factory().before().get(circuit)
                        : r.wired().factory().after().get(circuit));
        return new Metered(
                LiveSchematic.circuit(circuit, before),
                Phrase.of(key, circuit),
                stock.flatMap(reading),
                fitted.flatMap(reading));
    }

    private Metered both(String sort, String name, Function<Reading, Optional<Meter>> reading) {
        return new Metered(
                sort + " " + name,
                Phrase.of("pages.bay.at.thing", name),
                stock.flatMap(reading),
                fitted.flatMap(reading));
    }

    private static Optional<Meter> at(Reading reading, @Nullable Node node) {
        return node == null || !reading.wired().network().hasNode(node)
                ? Optional.empty()
                : Optional.of(new Meter(volts(reading, node), Optional.empty(), ""));
    }

    private static Optional<Volts> volts(Reading reading, Node node) {
        return reading.point().isFloating(node) ? Optional.empty() : Optional.of(Shown.volts(reading.volts(node)));
    }

    private static Optional<Meter> across(Reading reading, @Nullable Reach reach) {
        if (reach == null || !reading.has(reach.part())) {
            return Optional.empty();
        }
        boolean isHeld = !reading.point().isFloating(reach.from())
                || reading.wired().network().part(reach.part()) instanceof Relay;
        return Optional.of(new Meter(
                isHeld ? Optional.of(Shown.volts(reading.volts(reach))) : Optional.empty(),
                Optional.of(amps(reading, reach)),
                position(reading, reach.part())));
    }

    /** Volts against the body at its first end, amps along it. */
    private static Optional<Meter> along(Reading reading, @Nullable Reach reach) {
        return reach == null || !reading.has(reach.part())
                ? Optional.empty()
                : Optional.of(new Meter(volts(reading, reach.from()), Optional.of(amps(reading, reach)), ""));
    }

    private static Amps amps(Reading reading, Reach reach) {
        return Shown.amps(reading.amps(reach));
    }

    private static String position(Reading reading, PartId part) {
        if (!(reading.wired().network().part(part) instanceof Relay)) {
            return "";
        }
        return reading.point().relayPosition(part) == RelayPosition.PULLED_IN ? "pulled-in" : "released";
    }

    private static Optional<Meter> input(Reading reading, @Nullable InputReach input) {
        if (input == null || !reading.has(input.part())) {
            return Optional.empty();
        }
        if (reading.isFloating(input)) {
            return Optional.of(new Meter(Optional.empty(), Optional.empty(), "floating"));
        }
        String reads = Working.Reads.of(input, reading).name().toLowerCase(Locale.ROOT);
        return Optional.of(new Meter(volts(reading, input.wire()), Optional.empty(), reads));
    }

    /** What is on each conductor that the schematic draws. */
    Map<String, LiveSchematic.On> drawn() {
        Map<String, LiveSchematic.On> drawn = new TreeMap<>();
        fitted.ifPresent(reading -> {
            wired.added().wires().forEach((id, reach) -> {
                if (reading.has(reach.part())) {
                    drawn.put(id.value(), on(reading, reach.from(), Math.abs(reading.amps(reach))));
                }
            });
            wired.factory().before().forEach((id, node) -> put(drawn, reading, id, true, node));
            wired.factory().after().forEach((id, node) -> put(drawn, reading, id, false, node));
        });
        return drawn;
    }

    /** What runs in a factory wire is not counted: its parts have no wire of their own in every sheet. */
    private static void put(
            Map<String, LiveSchematic.On> drawn, Reading reading, CircuitId id, boolean before, Node node) {
        if (reading.wired().network().hasNode(node)) {
            drawn.put(LiveSchematic.circuit(id, before), on(reading, node, 0));
        }
    }

    private static LiveSchematic.On on(Reading reading, Node node, double amps) {
        return new LiveSchematic.On(reading.volts(node), amps, reading.point().isFloating(node));
    }
}
