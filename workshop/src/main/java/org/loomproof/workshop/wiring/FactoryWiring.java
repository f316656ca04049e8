package org.loomproof.workshop.wiring;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Diode;
import org.loomproof.network.part.DiodeModel;
import org.loomproof.network.part.Fuse;
import org.loomproof.network.part.Lamp;
import org.loomproof.network.part.LogicInput;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.part.Switch;
import org.loomproof.network.part.Wire;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.quantity.Quantity;
import org.loomproof.workshop.words.Phrase;

/** Draws the paths of a sheet. Knows paths only: no role, no colour and no note has a say. */
final class FactoryWiring {

    /** Filament lamps are rated at this: the test voltage of UN R37 for 12 V lamps (from memory). */
    static final double LAMP_RATED_VOLTS = 13.5;

    /** A supply that a module makes for its own input, seen through this: stiff beside any pull-up. */
    private static final double MODULE_SUPPLY_OHMS = 1e-3;

    private final Sheet sheet;
    private final Places places;
    private final Drawing drawing;
    private final FactoryRelays relays;
    private final Map<ElementId, Reach> loads = new LinkedHashMap<>();
    private final Map<ElementId, InputReach> inputs = new LinkedHashMap<>();

    private FactoryWiring(Sheet sheet, Places places, Drawing drawing) {
        this.sheet = sheet;
        this.places = places;
        this.drawing = drawing;
        this.relays = new FactoryRelays(drawing);
    }

    static FactoryParts draw(Sheet sheet, Set<CircuitId> cut, Drawing drawing) {
        Places places = new Places(sheet, cut);
        FactoryWiring wiring = new FactoryWiring(sheet, places, drawing);
        Map<CircuitId, Node> before = new LinkedHashMap<>();
        Map<CircuitId, Node> after = new LinkedHashMap<>();
        for (Circuit circuit : sheet.circuits()) {
            circuit.paths().forEach(path -> wiring.drawPath(circuit.id(), path));
            before.put(circuit.id(), places.before(circuit.id()));
            after.put(circuit.id(), places.after(circuit.id()));
        }
        wiring.loads.putAll(wiring.relays.draw());
        return new FactoryParts(wiring.loads, wiring.inputs, wiring.relays.contacts(), before, after);
    }

    private void drawPath(CircuitId circuit, List<PathStep> path) {
        Optional<Node> at = Optional.empty();
        for (int k = 0; k < path.size(); k++) {
            switch (path.get(k)) {
                case PathStep.Part part -> {
                    Node from = at.orElse(new Node("before " + part.id()));
                    Node to = nodeBehind(circuit, path, k);
                    drawPart(circuit, part, from, to);
                    at = Optional.of(to);
                }
                case PathStep.Supply place -> at = Optional.of(places.leaving(circuit, place));
                case PathStep.Ground place -> at = Optional.of(places.leaving(circuit, place));
                case PathStep.Point place -> at = Optional.of(places.leaving(circuit, place));
                case PathStep.Here place -> at = Optional.of(places.leaving(circuit, place));
            }
        }
    }

    private Node nodeBehind(CircuitId circuit, List<PathStep> path, int part) {
        if (part + 1 < path.size() && Places.isPlace(path.get(part + 1))) {
            return places.arriving(circuit, path.get(part + 1));
        }
        return new Node("behind " + ((PathStep.Part) path.get(part)).id());
    }

    private void drawPart(CircuitId circuit, PathStep.Part step, Node a, Node b) {
        PartId id = new PartId("car " + step.id());
        switch (step) {
            case PathStep.Fuse s ->
                drawing.add(
                        new Fuse(
                                id,
                                a,
                                b,
                                ohms(s, s.coldResistance()),
                                drawing.figures.take(s.id() + " rating", s.rating())),
                        words("fuse", s, circuit));
            case PathStep.Wire s ->
                drawing.add(new Wire(id, a, b, drawing.copper(ohms(s, s.resistance()))), words("wire", s, circuit));
            case PathStep.Switch s -> {
                drawing.add(new Switch(id, a, b, ohms(s, s.closedResistance())), words("switch", s, circuit));
                drawing.switches.add(new WorkedSwitch(id, s.operatedBy(), s.closedAt()));
            }
            case PathStep.Coil s -> relays.coil(s, a, b, words("coil", s, circuit));
            case PathStep.Contact s -> relays.contact(s, a, b, words("contact", s, circuit));
            case PathStep.Lamp s ->
                loads.put(
                        s.id(),
                        drawing.add(
                                drawing.warmed(new Lamp(
                                        id,
                                        a,
                                        b,
                                        LAMP_RATED_VOLTS,
                                        drawing.figures.take(s.id() + " power", s.power()))),
                                words("lamp", s, circuit)));
            case PathStep.Load s ->
                loads.put(s.id(), drawing.add(new Resistor(id, a, b, loadOhms(s)), words("load", s, circuit)));
            case PathStep.Resistor s ->
                drawing.add(new Resistor(id, a, b, ohms(s, s.resistance())), words("resistor", s, circuit));
            case PathStep.Diode s ->
                drawing.add(
                        new Diode(
                                id, s.forwards() ? a : b, s.forwards() ? b : a, drawing.warmed(DiodeModel.SILICON_3A)),
                        words("diode", s, circuit));
            case PathStep.Input s -> inputs.put(s.id(), drawInput(id, s, a, words("input", s, circuit)));
        }
    }

    private InputReach drawInput(PartId id, PathStep.Input s, Node wire, Phrase words) {
        Node supply = Places.POST;
        if (s.pullUpTo().isPresent()) {
            supply = new Node("supply of " + s.id());
            double volts =
                    drawing.figures.take(s.id() + " pull-up-to", s.pullUpTo().get());
            drawing.add(
                    new Battery(new PartId(id + " own supply"), supply, Node.CHASSIS, volts, MODULE_SUPPLY_OHMS),
                    words);
        }
        double low = drawing.figures.take(s.id() + " low-below", s.lowBelow());
        double high = drawing.figures.take(s.id() + " high-above", s.highAbove());
        OptionalDouble pullUp = pull(s.id() + " pull-up", s.pullUp());
        OptionalDouble pullDown = pull(s.id() + " pull-down", s.pullDown());
        drawing.add(
                new LogicInput(
                        id, wire, supply, Node.CHASSIS, pullUp, pullDown, low, Math.max(high, Math.nextUp(low)), false),
                words);
        return new InputReach(id, wire, Node.CHASSIS, low, high);
    }

    private OptionalDouble pull(String key, Optional<? extends Figure<? extends Quantity>> figure) {
        return figure.isPresent() ? OptionalDouble.of(drawing.figures.take(key, figure.get())) : OptionalDouble.empty();
    }

    private double ohms(PathStep.Part step, Figure<? extends Quantity> figure) {
        return drawing.figures.take(step.id() + " resistance", figure);
    }

    /** Windings are copper; what a heater or a module draws is taken to be the same in heat and cold. */
    private double loadOhms(PathStep.Load load) {
        double ohms = ohms(load, load.resistance());
        return switch (load.kind()) {
            case MOTOR, SOLENOID -> drawing.copper(ohms);
            case HEATER, ELECTRONIC -> ohms;
        };
    }

    private Phrase words(String what, PathStep.Part step, CircuitId circuit) {
        return Phrase.of(
                "origin.factory-" + what, step.id(), circuit, sheet.vehicle().name());
    }
}
