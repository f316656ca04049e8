package org.loomproof.workshop.meter.role;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.quantity.Watts;

/** One car out of all that a sheet may describe: each figure of a path that is a range has become one value. */
final class DrawnSheet {

    private final Chance chance;

    private DrawnSheet(Chance chance) {
        this.chance = chance;
    }

    static Sheet of(Sheet sheet, Chance chance) {
        DrawnSheet drawn = new DrawnSheet(chance);
        List<Circuit> circuits = new ArrayList<>();
        for (Circuit c : sheet.circuits()) {
            List<List<PathStep>> paths = c.paths().stream()
                    .map(path -> path.stream().map(drawn::step).toList())
                    .toList();
            circuits.add(c.withPaths(paths));
        }
        return new Sheet(sheet.vehicle(), sheet.operables(), circuits);
    }

    private PathStep step(PathStep step) {
        return switch (step) {
            case PathStep.Supply s -> s;
            case PathStep.Ground s -> s;
            case PathStep.Point s -> s;
            case PathStep.Here s -> s;
            case PathStep.Fuse s -> new PathStep.Fuse(s.id(), amps(s.rating()), ohms(s.coldResistance()));
            case PathStep.Wire s -> new PathStep.Wire(s.id(), ohms(s.resistance()));
            case PathStep.Switch s ->
                new PathStep.Switch(s.id(), s.operatedBy(), s.closedAt(), ohms(s.closedResistance()));
            case PathStep.Coil s ->
                new PathStep.Coil(s.id(), s.relay(), ohms(s.resistance()), volts(s.pullIn()), volts(s.dropOut()));
            case PathStep.Contact s ->
                new PathStep.Contact(s.id(), s.relay(), s.closedWhenEnergised(), ohms(s.closedResistance()));
            case PathStep.Lamp s -> {
                double watts = chance.from(s.power());
                yield new PathStep.Lamp(
                        s.id(), Figure.exactly(new Watts(watts), s.power().basis()));
            }
            case PathStep.Load s -> new PathStep.Load(s.id(), s.kind(), ohms(s.resistance()));
            case PathStep.Resistor s -> new PathStep.Resistor(s.id(), ohms(s.resistance()));
            case PathStep.Diode s -> s;
            case PathStep.Input s ->
                new PathStep.Input(
                        s.id(),
                        s.pullUp().map(this::ohms),
                        pullUpTo(s),
                        s.pullDown().map(this::ohms),
                        volts(s.lowBelow()),
                        volts(s.highAbove()));
        };
    }

    private Optional<Figure<Volts>> pullUpTo(PathStep.Input input) {
        return input.pullUpTo().map(figure -> Figure.exactly(new Volts(chance.level(figure)), figure.basis()));
    }

    private Figure<Ohms> ohms(Figure<Ohms> figure) {
        return Figure.exactly(new Ohms(chance.from(figure)), figure.basis());
    }

    private Figure<Amps> amps(Figure<Amps> figure) {
        return Figure.exactly(new Amps(chance.from(figure)), figure.basis());
    }

    private Figure<Volts> volts(Figure<Volts> figure) {
        return Figure.exactly(new Volts(chance.from(figure)), figure.basis());
    }
}
