package org.loomproof.workshop.prover.explore;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.RangedFigure;
import org.loomproof.workshop.wiring.Warmth;

/** Both vehicles with one ranged figure at one end of its range, for every figure and end. */
public final class Variations {

    /** One figure at one end. */
    public record Variation(RangedFigure figure, Corner.Taken taken, Vehicle stock, Vehicle fitted) {

        /** That figure there, and all others at their typical values. */
        public Corner corner() {
            return Corner.TYPICAL.with(figure.key(), taken);
        }
    }

    private final Vehicle stock;
    private final Vehicle fitted;
    private final List<Variation> all = new ArrayList<>();

    private Variations(Vehicle stock, Vehicle fitted) {
        this.stock = stock;
        this.fitted = fitted;
    }

    /** None: every figure stays at its typical value. */
    static Variations none(Vehicle stock, Vehicle fitted) {
        return new Variations(stock, fitted);
    }

    /** All there are. */
    public static Variations all(Brief brief, Plan plan, Vehicle stock, Vehicle fitted) {
        Variations variations = new Variations(stock, fitted);
        Map<String, RangedFigure> figures = new LinkedHashMap<>();
        Stream.concat(stock.wired().ranged().stream(), fitted.wired().ranged().stream())
                .forEach(figure -> figures.putIfAbsent(figure.key(), figure));
        RangedFigure warmth = Warmth.range(brief.order().shop());
        figures.put(warmth.key(), warmth);
        for (RangedFigure figure : figures.values()) {
            for (Corner.Taken taken : List.of(Corner.Taken.LOW, Corner.Taken.HIGH)) {
                Corner corner = Corner.TYPICAL.with(figure.key(), taken);
                variations.all.add(new Variation(
                        figure, taken, Vehicle.stock(brief, corner), Vehicle.fitted(brief, plan, corner)));
            }
        }
        return variations;
    }

    /** All of them. */
    public List<Variation> all() {
        return List.copyOf(all);
    }

    /** Those that change anything in the area, restricted to it. */
    public List<Variation> within(Area area) {
        Vehicle stockThere = stock.restrictedTo(area);
        Vehicle fittedThere = fitted.restrictedTo(area);
        List<Variation> there = new ArrayList<>();
        for (Variation each : all) {
            Vehicle s = each.stock().restrictedTo(area);
            Vehicle f = each.fitted().restrictedTo(area);
            if (differs(s, stockThere) || differs(f, fittedThere)) {
                there.add(new Variation(each.figure(), each.taken(), s, f));
            }
        }
        return there;
    }

    private static boolean differs(Vehicle one, Vehicle other) {
        return !one.wired().network().parts().equals(other.wired().network().parts());
    }

    /** Whether any figure is a range at all. */
    boolean isEmpty() {
        return all.isEmpty();
    }
}
