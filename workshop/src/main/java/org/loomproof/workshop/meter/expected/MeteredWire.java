package org.loomproof.workshop.meter.expected;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Meter;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.network.solve.SolveOutcome;
import org.loomproof.network.solve.Solver;
import org.loomproof.network.solve.SolverOptions;
import org.loomproof.workshop.brief.kit.Behaviour;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.meter.expected.ExpectedReading.Method;
import org.loomproof.workshop.meter.reading.MeterFacts;
import org.loomproof.workshop.prover.explore.Area;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.RangedFigure;
import org.loomproof.workshop.wiring.Settings;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.wiring.VehicleWiring;
import org.loomproof.workshop.wiring.Wired;
import org.loomproof.workshop.words.Phrase;

/** One wire of the stock car with a usual meter on it, at every corner that can matter to it. */
final class MeteredWire {

    /** So many figures have 256 corners. */
    private static final int MOST_ENUMERATED = 8;

    private static final PartId METER = new PartId("the meter");

    private final Sheet sheet;
    private final Behaviour behaviour;
    private final Touch touch;
    private final Set<CircuitId> cut;
    private final Wired bare;
    private final Area area;
    private final List<RangedFigure> figures;
    private final Map<Corner, Metered> made = new HashMap<>();

    /** The car at one corner with the meter in it. */
    private record Metered(Wired wired, Settings settings, Solver solver, Node node) {}

    MeteredWire(Sheet sheet, Behaviour behaviour, Touch touch) {
        this.sheet = sheet;
        this.behaviour = behaviour;
        this.touch = touch;
        this.cut = touch.end() == Touch.End.WHOLE ? Set.of() : Set.of(touch.circuit());
        this.bare = VehicleWiring.cutOpen(sheet, cut, Corner.TYPICAL);
        this.area = areaOf(metered(bare));
        this.figures = figures();
    }

    private Node node(Wired wired) {
        Map<CircuitId, Node> side = touch.end() == Touch.End.AFTER_CUT
                ? wired.factory().after()
                : wired.factory().before();
        return Objects.requireNonNull(side.get(touch.circuit()), () -> "no circuit " + touch.circuit());
    }

    private Wired metered(Wired wired) {
        Meter meter = new Meter(METER, node(wired), Node.CHASSIS, MeterFacts.USUAL.inputOhms());
        return wired.withMore(List.of(meter), Phrase.of("origin.meter"));
    }

    private static Area areaOf(Wired metered) {
        return Area.list(metered, metered).stream()
                .filter(each -> each.parts().contains(METER))
                .findFirst()
                .orElseThrow();
    }

    /** The figures whose ends make another network of the area. */
    private List<RangedFigure> figures() {
        Map<String, RangedFigure> all = new LinkedHashMap<>();
        bare.ranged().forEach(figure -> all.putIfAbsent(figure.key(), figure));
        Wired typical = at(Corner.TYPICAL).wired();
        return all.values().stream()
                .filter(figure -> List.of(Corner.Taken.LOW, Corner.Taken.HIGH).stream()
                        .anyMatch(end -> !at(Corner.TYPICAL.with(figure.key(), end))
                                .wired()
                                .network()
                                .parts()
                                .equals(typical.network().parts())))
                .toList();
    }

    private Metered at(Corner corner) {
        return made.computeIfAbsent(corner, this::make);
    }

    private Metered make(Corner corner) {
        Wired drawn = metered(VehicleWiring.cutOpen(sheet, cut, corner));
        Wired there = drawn.restrictedTo(part -> area.parts().contains(part));
        return new Metered(
                there,
                new Settings(there, sheet, behaviour),
                Solver.of(there.network(), SolverOptions.USUAL.withoutOtherStablePoints()),
                node(drawn));
    }

    /** What the meter must show; empty where the car itself does not come to rest. */
    Optional<ExpectedReading> reading(Situation when) {
        boolean floats = floats(when);
        Optional<VoltsBand> typical = line(Corner.TYPICAL, when);
        if (typical.isEmpty()) {
            return Optional.empty();
        }
        Method method = figures.isEmpty()
                ? Method.FIXED
                : figures.size() <= MOST_ENUMERATED ? Method.EVERY_CORNER : Method.EACH_AND_TOGETHER;
        VoltsBand band = typical.get();
        for (Corner corner : corners(when, typical.get(), method)) {
            Optional<VoltsBand> there = line(corner, when);
            if (there.isEmpty()) {
                return Optional.empty();
            }
            band = band.or(there.get());
        }
        return Optional.of(new ExpectedReading(touch, when, band, floats, method));
    }

    private List<Corner> corners(Situation when, VoltsBand typical, Method method) {
        return switch (method) {
            case FIXED -> List.of();
            case EVERY_CORNER -> everyCorner();
            case EACH_AND_TOGETHER -> eachAndTogether(when, typical);
        };
    }

    private List<Corner> everyCorner() {
        List<Corner> corners = new ArrayList<>(List.of(Corner.TYPICAL));
        for (RangedFigure figure : figures) {
            List<Corner> further = new ArrayList<>();
            for (Corner corner : corners) {
                further.add(corner.with(figure.key(), Corner.Taken.LOW));
                further.add(corner.with(figure.key(), Corner.Taken.HIGH));
            }
            corners = further;
        }
        return corners;
    }

    private List<Corner> eachAndTogether(Situation when, VoltsBand typical) {
        List<Corner> corners = new ArrayList<>();
        Corner lowest = Corner.TYPICAL;
        Corner highest = Corner.TYPICAL;
        for (RangedFigure figure : figures) {
            Corner down = Corner.TYPICAL.with(figure.key(), Corner.Taken.LOW);
            Corner up = Corner.TYPICAL.with(figure.key(), Corner.Taken.HIGH);
            corners.add(down);
            corners.add(up);
            double atLow = line(down, when).orElse(typical).highAt14();
            double atHigh = line(up, when).orElse(typical).highAt14();
            lowest = lowest.with(figure.key(), atLow <= atHigh ? Corner.Taken.LOW : Corner.Taken.HIGH);
            highest = highest.with(figure.key(), atLow <= atHigh ? Corner.Taken.HIGH : Corner.Taken.LOW);
        }
        corners.add(lowest);
        corners.add(highest);
        return corners;
    }

    private Optional<VoltsBand> line(Corner corner, Situation when) {
        Metered metered = at(corner);
        Setting setting = metered.settings().of(when);
        Optional<OperatingPoint> few = point(metered, setting, VoltsBand.FEW_VOLTS);
        Optional<OperatingPoint> many = point(metered, setting, VoltsBand.MANY_VOLTS);
        return few.isPresent() && many.isPresent()
                ? Optional.of(
                        VoltsBand.at(few.get().volts(metered.node()), many.get().volts(metered.node())))
                : Optional.empty();
    }

    private static Optional<OperatingPoint> point(Metered metered, Setting setting, double batteryVolts) {
        SolveOutcome outcome =
                metered.solver().solve(setting.emf(metered.wired().battery(), batteryVolts));
        return outcome instanceof SolveOutcome.Settled settled ? Optional.of(settled.point()) : Optional.empty();
    }

    /** Whether nothing but the meter would hold the wire. */
    private boolean floats(Situation when) {
        Wired there = bare.restrictedTo(part -> area.parts().contains(part));
        Node node = node(bare);
        return !there.network().hasNode(node)
                || (Solver.of(there.network(), SolverOptions.USUAL.withoutOtherStablePoints())
                                        .solve(new Settings(there, sheet, behaviour).of(when))
                                instanceof SolveOutcome.Settled settled
                        && settled.point().isFloating(node));
    }
}
