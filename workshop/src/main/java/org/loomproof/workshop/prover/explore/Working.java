package org.loomproof.workshop.prover.explore;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Map.Entry;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.InputReach;
import org.loomproof.workshop.wiring.Reach;

/** What each load of the stock vehicle gets when it works: the most in any position, at each supply point. */
public final class Working {

    private final Map<ElementId, Map<SupplyPoint, Double>> amps = new HashMap<>();
    private final Map<ElementId, Map<SupplyPoint, Double>> volts = new HashMap<>();

    /** Of everything at rest. */
    private final Map<ElementId, Map<SupplyPoint, Double>> resting = new HashMap<>();

    private final Map<ElementId, List<Reads>> levels = new HashMap<>();
    private final Worked worked;
    private final Ways ways;

    Working(Sheet sheet) {
        this(sheet, new Ways());
    }

    private Working(Sheet sheet, Ways ways) {
        this.worked = new Worked(sheet);
        this.ways = ways;
    }

    /** Nothing yet, but for what is a matter of all supply points together. */
    Working elsewhere(Sheet sheet) {
        return new Working(sheet, new Ways(ways));
    }

    /** How a factory input reads its wire. */
    public enum Reads {
        LOW,
        BETWEEN,
        HIGH;

        /** What the input reads there. */
        public static Reads of(InputReach input, Reading reading) {
            return of(input, reading.volts(input));
        }

        /** How it reads those volts. */
        public static Reads of(InputReach input, double volts) {
            if (volts <= input.lowBelow()) {
                return LOW;
            }
            return volts >= input.highAbove() ? HIGH : BETWEEN;
        }
    }

    /** The most amps that a shared contact or fuse of the stock vehicle ever carries that way round; never under zero. */
    public double mostAmps(PartId shared, boolean forwards) {
        return forwards ? ways.forwards(shared) : ways.backwards(shared);
    }

    /** Takes one more reading of the stock vehicle into account; the first at a supply point is that of everything at rest. */
    void add(SupplyPoint supply, SortedMap<OperableId, String> positions, Reading stock) {
        worked.add(supply, positions, stock);
        ways.add(stock);
        for (Entry<ElementId, Reach> load : stock.wired().factory().loads().entrySet()) {
            Reach reach = load.getValue();
            if (stock.has(reach.part())) {
                raise(amps, supply, load.getKey(), Math.abs(stock.amps(reach)));
                raise(volts, supply, load.getKey(), Math.abs(stock.volts(reach)));
                resting.computeIfAbsent(load.getKey(), l -> new EnumMap<>(SupplyPoint.class))
                        .putIfAbsent(supply, Math.abs(stock.volts(reach)));
            }
        }
        for (Entry<ElementId, InputReach> input :
                stock.wired().factory().inputs().entrySet()) {
            if (stock.has(input.getValue().part())) {
                List<Reads> seen = levels.computeIfAbsent(input.getKey(), i -> new ArrayList<>());
                Reads now = Reads.of(input.getValue(), stock);
                if (!seen.contains(now)) {
                    seen.add(now);
                }
            }
        }
    }

    /** The most amps through the load at that supply point. */
    public double amps(SupplyPoint supply, ElementId load) {
        return most(amps, supply, load);
    }

    /** The most volts across the load at that supply point. */
    public double volts(SupplyPoint supply, ElementId load) {
        return most(volts, supply, load);
    }

    /** Volts across the load at that supply point with everything at rest. */
    public double restingVolts(SupplyPoint supply, ElementId load) {
        return most(resting, supply, load);
    }

    /**
     * Volts across a load, or at an input, while the circuit's own switches work it, first end against the other; empty where
     * they do not, or do so both ways by turns.
     */
    public OptionalDouble worked(CircuitId circuit, ElementId element, SupplyPoint supply) {
        return worked.volts(circuit, element, supply);
    }

    /** Whether the circuit's own switches change what the load gets by a good part of the battery's volts. */
    boolean isWorkedBy(CircuitId circuit, ElementId load, SupplyPoint supply) {
        double least = WorkedLoads.LEAST_SHARE * supply.volts().value();
        OptionalDouble own = worked(circuit, load, supply);
        return own.isPresent() && Math.abs(own.getAsDouble()) > least && worked.moves(circuit, load, supply) > least;
    }

    /** Whether the circuit's own switches give the input a level of their own. */
    boolean isLevelOf(CircuitId circuit, ElementId input, SupplyPoint supply) {
        return worked.isLevelOf(circuit, input, supply);
    }

    /**
     * By how many volts a reading lies on the step of a ladder that the circuit's own switches give an input, negative beside
     * it; empty where the input tells no more than two levels, NaN where a hand gives it a step already.
     */
    public OptionalDouble onStepBy(
            CircuitId circuit, ElementId input, SupplyPoint supply, double volts, double byHand) {
        return worked.step(circuit, input, supply)
                .map(step -> OptionalDouble.of(
                        Math.abs(byHand - step.resting()) > step.within()
                                ? Double.NaN
                                : step.within() - Math.abs(volts - step.level())))
                .orElse(OptionalDouble.empty());
    }

    /** The level that something in the car works the input to: low or high, and not what it reads at rest. */
    public Optional<Reads> workedLevel(ElementId input) {
        return levels.getOrDefault(input, List.of()).stream()
                .skip(1)
                .filter(level -> level != Reads.BETWEEN)
                .findFirst();
    }

    private static void raise(
            Map<ElementId, Map<SupplyPoint, Double>> most, SupplyPoint supply, ElementId load, double value) {
        most.computeIfAbsent(load, l -> new EnumMap<>(SupplyPoint.class)).merge(supply, value, Math::max);
    }

    private static double most(Map<ElementId, Map<SupplyPoint, Double>> most, SupplyPoint supply, ElementId load) {
        return most.getOrDefault(load, Map.of()).getOrDefault(supply, 0.0);
    }
}
