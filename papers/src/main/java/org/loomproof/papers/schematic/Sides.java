package org.loomproof.papers.schematic;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.loomproof.papers.drawing.Port.Side;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Plan;

/**
 * How far each added part stands on the way from the vehicle (0) to the controller (1), and on which side each of its
 * terminals is best led out. Every part settles at the mean of what it is joined with.
 */
final class Sides {

    /** Weight of the pull towards the vehicle, so that a chain that ends at the body runs away from the controller. */
    private static final double PULL = 0.15;

    /** More rounds than any chain of parts is long. */
    private static final int ROUNDS = 200;

    private final Nets nets;
    private final Map<AddedPartId, Double> ranks = new HashMap<>();

    Sides(Plan plan) {
        this.nets = new Nets(plan);
        plan.parts().forEach(p -> ranks.put(p.id(), 0.5));
        for (int round = 0; round < ROUNDS; round++) {
            plan.parts().forEach(this::settle);
        }
    }

    private void settle(AddedPart part) {
        List<Double> beyond = part.terminals().stream()
                .map(t -> meanBeyond(new End.OfPart(part.id(), t)))
                .filter(OptionalDouble::isPresent)
                .map(OptionalDouble::getAsDouble)
                .toList();
        double sum = beyond.stream().mapToDouble(Double::doubleValue).sum();
        ranks.put(part.id(), sum / (beyond.size() + PULL));
    }

    private OptionalDouble meanBeyond(End end) {
        List<AddedWire> wires = nets.listWires(end);
        return wires.stream()
                .map(w -> rank(Nets.other(w, end)))
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .average();
    }

    /** How far an end stands; the body is everywhere. */
    OptionalDouble rank(End end) {
        return switch (end) {
            case End.OfLead e -> OptionalDouble.of(1);
            case End.OfPart e -> OptionalDouble.of(ranks.getOrDefault(e.part(), 0.5));
            case End.Tap e -> OptionalDouble.of(0);
            case End.CutBefore e -> OptionalDouble.of(0);
            case End.CutAfter e -> OptionalDouble.of(0);
            case End.Body e -> OptionalDouble.empty();
        };
    }

    /** The better side for one terminal; {@code otherwise} when nothing but the body is there. */
    Side side(AddedPartId part, String terminal, Side otherwise) {
        OptionalDouble beyond = meanBeyond(new End.OfPart(part, terminal));
        if (beyond.isEmpty()) {
            return otherwise;
        }
        return beyond.getAsDouble() > ranks.getOrDefault(part, 0.5) + 1e-9 ? Side.RIGHT : Side.LEFT;
    }

    /** True when of two terminals the first is better led out to the left. */
    boolean isFirstLeft(AddedPart part, String first, String second) {
        OptionalDouble one = meanBeyond(new End.OfPart(part.id(), first));
        OptionalDouble other = meanBeyond(new End.OfPart(part.id(), second));
        return one.orElse(other.orElse(0) >= 0.5 ? 0 : 1) <= other.orElse(one.orElse(0) >= 0.5 ? 0 : 1);
    }

    /** The opposite side. */
    static Side opposite(Side side) {
        return switch (side) {
            case LEFT -> Side.RIGHT;
            case RIGHT -> Side.LEFT;
        };
    }
}
