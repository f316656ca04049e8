package org.loomproof.workshop.planner.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.trade.supply.SupplyPoint;

/**
 * What is joined to either side of wires that would be cut, posts and body apart. A cut is at the right place when one side
 * holds all that works and the other all that switches: then no switch of the car can act on what the cut drives.
 */
public final class Severed {

    private static final String FIRM = "";

    private final Ties ties = new Ties();
    private final List<Joined> parts = new ArrayList<>();
    private final boolean throughParts;

    private record Joined(PathStep.Part part, String a, String b) {}

    /**
     * Both sides of one cut wire.
     *
     * @param load the end towards what works
     * @param feed the end towards what switches
     */
    public record Cut(End load, End feed) {}

    /** The sheet with these wires cut: what hangs together through parts is one side. */
    public Severed(Sheet sheet, Set<CircuitId> cut) {
        this(sheet, cut, true);
    }

    private Severed(Sheet sheet, Set<CircuitId> cut, boolean throughParts) {
        this.throughParts = throughParts;
        for (Circuit circuit : sheet.circuits()) {
            for (int i = 0; i < circuit.paths().size(); i++) {
                lay(circuit, i, cut.contains(circuit.id()));
            }
        }
    }

    /**
     * The sheet with one wire cut, and of either side only what meets the wire itself: for a motor that has the other end of its
     * winding on a wire which leads to the switch all the same.
     */
    public static Severed atTheWire(Sheet sheet, CircuitId cut) {
        return new Severed(sheet, Set.of(cut), false);
    }

    private void lay(Circuit circuit, int number, boolean isCut) {
        String at = null;
        List<PathStep> path = circuit.paths().get(number);
        for (int i = 0; i < path.size(); i++) {
            PathStep step = path.get(i);
            if (step instanceof PathStep.Part part) {
                String from = at == null ? "end " + part.id() : at;
                boolean placeFollows = i + 1 < path.size() && !(path.get(i + 1) instanceof PathStep.Part);
                String to = placeFollows
                        ? arriving(circuit, path.get(i + 1))
                        : "between " + circuit.id() + " " + number + " " + i;
                parts.add(new Joined(part, from, to));
                if (throughParts || part instanceof PathStep.Wire) {
                    join(from, to);
                }
                at = to;
            } else {
                String here = arriving(circuit, step);
                if (at != null) {
                    join(at, here);
                }
                at = step instanceof PathStep.Here && isCut ? after(circuit.id()) : here;
            }
        }
    }

    private static String arriving(Circuit circuit, PathStep place) {
        return switch (place) {
            case PathStep.Supply() -> FIRM;
            case PathStep.Ground() -> FIRM;
            case PathStep.Point(var id) -> "point " + id;
            case PathStep.Here() -> before(circuit.id());
            case PathStep.Part part -> throw new IllegalArgumentException(part.id() + " is no place");
        };
    }

    private static String before(CircuitId circuit) {
        return "before " + circuit;
    }

    private static String after(CircuitId circuit) {
        return "after " + circuit;
    }

    private void join(String one, String other) {
        if (!one.equals(FIRM) && !other.equals(FIRM)) {
            ties.tie(one, other);
        }
    }

    /** The sides of a circuit that was cut, when what works and what switches are apart. */
    public Optional<Cut> cut(CircuitId circuit) {
        String before = ties.root(before(circuit));
        String after = ties.root(after(circuit));
        End beforeEnd = new End.CutBefore(circuit);
        End afterEnd = new End.CutAfter(circuit);
        if (works(after) && !switches(after) && switches(before)) {
            return Optional.of(new Cut(afterEnd, beforeEnd));
        }
        if (works(before) && !switches(before) && switches(after)) {
            return Optional.of(new Cut(beforeEnd, afterEnd));
        }
        return Optional.empty();
    }

    /** True when two cut ends still hang on the same thing that works, such as the two legs of a motor. */
    public boolean isOneLoad(End one, End other) {
        return ties.root(node(one)).equals(ties.root(node(other)));
    }

    /** What all that works at that end draws at the highest supply, motors held fast: never too small. */
    public Amps draws(End end) {
        String side = ties.root(node(end));
        double siemens = parts.stream()
                .filter(joined -> touches(joined, side))
                .mapToDouble(joined -> siemens(joined.part()))
                .sum();
        return new Amps(SupplyPoint.HIGH.volts().value() * siemens);
    }

    private static double siemens(PathStep.Part part) {
        return switch (part) {
            case PathStep.Load load -> 1 / load.resistance().low().value();
            case PathStep.Coil coil -> 1 / coil.resistance().low().value();
            case PathStep.Lamp lamp -> lamp.power().high().value() / (12.0 * 12.0);
            case PathStep.Input input ->
                input.pullUp().map(r -> 1 / r.low().value()).orElse(0.0);
            case PathStep.Fuse f -> 0;
            case PathStep.Wire w -> 0;
            case PathStep.Switch s -> 0;
            case PathStep.Contact c -> 0;
            case PathStep.Resistor r -> 0;
            case PathStep.Diode d -> 0;
        };
    }

    private static String node(End end) {
        return switch (end) {
            case End.CutBefore cut -> before(cut.circuit());
            case End.CutAfter cut -> after(cut.circuit());
            case End.Tap tap -> before(tap.circuit());
            case End.OfLead lead -> throw new IllegalArgumentException(lead + " is no factory wire");
            case End.OfPart part -> throw new IllegalArgumentException(part + " is no factory wire");
            case End.Body body -> throw new IllegalArgumentException("the body is no factory wire");
        };
    }

    private boolean touches(Joined joined, String side) {
        return (!joined.a().equals(FIRM) && ties.root(joined.a()).equals(side))
                || (!joined.b().equals(FIRM) && ties.root(joined.b()).equals(side));
    }

    private boolean works(String side) {
        return parts.stream()
                .anyMatch(joined -> touches(joined, side)
                        && (joined.part() instanceof PathStep.Load
                                || joined.part() instanceof PathStep.Lamp
                                || joined.part() instanceof PathStep.Coil
                                || joined.part() instanceof PathStep.Input));
    }

    private boolean switches(String side) {
        return parts.stream()
                .anyMatch(joined -> touches(joined, side)
                        && (joined.part() instanceof PathStep.Switch || joined.part() instanceof PathStep.Contact));
    }
}
