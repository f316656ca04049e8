package org.loomproof.workshop.prover.explore;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;
import org.loomproof.network.part.Node;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.trade.supply.SupplyPoint;

/**
 * What a circuit's own switches do in the stock vehicle: which way round a motor then runs, which level an input then sees. A
 * circuit is worked where its wire is at the pole at which it is active; where that is no pole, where a switch in its paths is
 * not as it is at rest.
 */
final class Worked {

    /** A wire is at a pole when it is no further from it than this share of the battery's volts. */
    private static final double AT_POLE = 0.25;

    /** Levels of an input that lie closer than this are one. */
    private static final double ONE_LEVEL_VOLTS = 0.05;

    /** A step is met within this share of the way to the next level that the car makes; common practice, no published source. */
    private static final double STEP_SHARE = 1.0 / 3;

    private record Watch(CircuitId circuit, Level active, List<PathStep.Switch> switches, boolean follows) {}

    private record At(CircuitId circuit, ElementId element, SupplyPoint supply) {}

    private record Seen(ElementId element, SupplyPoint supply) {}

    private final Sheet sheet;
    private final List<Watch> watched;
    private final Map<At, Double> most = new HashMap<>();
    private final Set<At> bothWays = new LinkedHashSet<>();
    private final Map<Seen, DoubleSummaryStatistics> ever = new HashMap<>();
    private final Map<Seen, TreeSet<Double>> levels = new HashMap<>();
    private final Map<Seen, Double> resting = new HashMap<>();

    /**
     * A level that a module tells from others.
     *
     * @param level volts while the circuit's own switches give it
     * @param within how many volts beside it still count
     * @param resting volts with everything at rest
     */
    record Step(double level, double within, double resting) {}

    Worked(Sheet sheet) {
        this.sheet = sheet;
        this.watched = sheet.circuits().stream()
                .map(c -> new Watch(
                        c.id(),
                        c.switching().active(),
                        switches(c),
                        !c.follows().isEmpty()))
                .filter(w -> !w.switches().isEmpty() || w.follows())
                .toList();
    }

    private static List<PathStep.Switch> switches(Circuit circuit) {
        return circuit.paths().stream()
                .flatMap(List::stream)
                .filter(PathStep.Switch.class::isInstance)
                .map(PathStep.Switch.class::cast)
                .toList();
    }

    /** Takes in one reading of the stock vehicle; the first at a supply point is that of everything at rest. */
    void add(SupplyPoint supply, SortedMap<OperableId, String> positions, Reading stock) {
        stock.wired().factory().loads().forEach((load, reach) -> {
            if (stock.has(reach.part())) {
                ever.computeIfAbsent(new Seen(load, supply), k -> new DoubleSummaryStatistics())
                        .accept(stock.volts(reach));
            }
        });
        stock.wired().factory().inputs().forEach((input, reach) -> {
            if (stock.has(reach.part())) {
                Seen seen = new Seen(input, supply);
                levels.computeIfAbsent(seen, k -> new TreeSet<>()).add(stock.volts(reach));
                resting.putIfAbsent(seen, stock.volts(reach));
            }
        });
        for (Watch watch : watched) {
            if (isWorked(watch, supply, positions, stock)) {
                stock.wired().factory().loads().forEach((load, reach) -> {
                    if (stock.has(reach.part())) {
                        take(new At(watch.circuit(), load, supply), stock.volts(reach));
                    }
                });
                stock.wired().factory().inputs().forEach((input, reach) -> {
                    if (stock.has(reach.part())) {
                        take(new At(watch.circuit(), input, supply), stock.volts(reach));
                    }
                });
            }
        }
    }

    private boolean isWorked(Watch watch, SupplyPoint supply, SortedMap<OperableId, String> positions, Reading stock) {
        Node wire = stock.wired().factory().before().get(watch.circuit());
        if (wire == null || !stock.wired().network().hasNode(wire)) {
            return false;
        }
        double volts = supply.volts().value();
        return switch (watch.active()) {
            case Level.Ground g -> stock.volts(wire) < AT_POLE * volts && isByItsOwn(watch, positions);
            case Level.Supply s -> stock.volts(wire) > (1 - AT_POLE) * volts && isByItsOwn(watch, positions);
            case Level.Open o -> isLetGo(watch, positions, sheet);
            case Level.Resistance r -> isMoved(watch, positions);
            case Level.Voltage v -> isMoved(watch, positions);
            case Level.Reversing r -> isMoved(watch, positions);
            case Level.Data d -> isMoved(watch, positions);
        };
    }

    private static boolean isLetGo(Watch watch, SortedMap<OperableId, String> positions, Sheet sheet) {
        return !watch.switches().isEmpty()
                && watch.switches().stream()
                        .noneMatch(s -> s.closedAt()
                                .contains(positions.getOrDefault(
                                        s.operatedBy(),
                                        sheet.operable(s.operatedBy()).rest())));
    }

    private boolean isMoved(Watch watch, SortedMap<OperableId, String> positions) {
        return watch.switches().stream().anyMatch(s -> {
            String rest = sheet.operable(s.operatedBy()).rest();
            String now = positions.getOrDefault(s.operatedBy(), rest);
            return s.closedAt().contains(now) != s.closedAt().contains(rest);
        });
    }

    /** False when a switch of the car was moved and none of the circuit's own answers: then the level is another circuit's. */
    private boolean isByItsOwn(Watch watch, SortedMap<OperableId, String> positions) {
        return watch.switches().isEmpty()
                || isMoved(watch, positions)
                || watch.switches().stream().anyMatch(s -> {
                    String rest = sheet.operable(s.operatedBy()).rest();
                    return positions.getOrDefault(s.operatedBy(), rest).equals(rest);
                });
    }

    private void take(At at, double volts) {
        Double before = most.get(at);
        double tenth = at.supply().volts().value() / 10;
        if (before != null && before * volts < 0 && Math.min(Math.abs(before), Math.abs(volts)) > tenth) {
            bothWays.add(at);
        }
        if (before == null || Math.abs(volts) > Math.abs(before)) {
            most.put(at, volts);
        }
    }

    /** Volts across the load, with their sign, while the circuit works it; empty where it does not, or both ways by turns. */
    OptionalDouble volts(CircuitId circuit, ElementId element, SupplyPoint supply) {
        At at = new At(circuit, element, supply);
        Double volts = most.get(at);
        return volts == null || bothWays.contains(at) ? OptionalDouble.empty() : OptionalDouble.of(volts);
    }

    /** True when the circuit's own switches give the input a level that it does not have with everything at rest. */
    boolean isLevelOf(CircuitId circuit, ElementId input, SupplyPoint supply) {
        OptionalDouble own = volts(circuit, input, supply);
        Double rest = resting.get(new Seen(input, supply));
        return own.isPresent() && rest != null && Math.abs(own.getAsDouble() - rest) > ONE_LEVEL_VOLTS;
    }

    /** How many volts the load gets more or less while the circuit works it than it gets at some other time. */
    double moves(CircuitId circuit, ElementId load, SupplyPoint supply) {
        double own = most.getOrDefault(new At(circuit, load, supply), 0.0);
        DoubleSummaryStatistics all = ever.getOrDefault(new Seen(load, supply), new DoubleSummaryStatistics());
        return all.getCount() == 0 ? 0 : Math.max(own - all.getMin(), all.getMax() - own);
    }

    /** The step of a ladder that the circuit's own switches give an input; empty where the input tells no more than two levels. */
    Optional<Step> step(CircuitId circuit, ElementId input, SupplyPoint supply) {
        OptionalDouble own = volts(circuit, input, supply);
        List<Double> distinct = distinctLevels(new Seen(input, supply));
        if (own.isEmpty() || distinct.size() <= 2) {
            return Optional.empty();
        }
        double next = distinct.stream()
                .mapToDouble(level -> Math.abs(level - own.getAsDouble()))
                .filter(distance -> distance > ONE_LEVEL_VOLTS)
                .min()
                .orElseThrow();
        return Optional.of(new Step(
                own.getAsDouble(), next * STEP_SHARE, Objects.requireNonNull(resting.get(new Seen(input, supply)))));
    }

    private List<Double> distinctLevels(Seen seen) {
        List<Double> distinct = new ArrayList<>();
        for (double level : levels.getOrDefault(seen, new TreeSet<>())) {
            if (distinct.isEmpty() || level - distinct.getLast() > ONE_LEVEL_VOLTS) {
                distinct.add(level);
            }
        }
        return distinct;
    }
}
