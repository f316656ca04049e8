package org.loomproof.workshop.wiring;

import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.quantity.Quantity;

/**
 * One choice for every ranged figure: which point of its range is computed with. A figure that is not named takes its
 * typical value.
 *
 * @param choices by {@link RangedFigure#key()}
 */
public record Corner(SortedMap<String, Taken> choices) {

    /** Every figure at its typical value. */
    public static final Corner TYPICAL = new Corner(new TreeMap<>());

    /** Which point of a range. */
    public enum Taken {
        LOW,
        TYPICAL,
        HIGH
    }

    public Corner {
        choices = Collections.unmodifiableSortedMap(new TreeMap<>(choices));
    }

    /** The same with one figure moved. */
    public Corner with(String key, Taken taken) {
        Map<String, Taken> moved = new TreeMap<>(choices);
        moved.put(key, taken);
        return new Corner(new TreeMap<>(moved));
    }

    /** Which point of its range a figure takes. */
    public Taken taken(String key) {
        return choices.getOrDefault(key, Taken.TYPICAL);
    }

    /** This corner's choice for one figure alone. */
    public Corner only(String key) {
        return TYPICAL.with(key, taken(key));
    }

    /** Both corners' choices together; where both choose, this one's. */
    public Corner and(Corner other) {
        Map<String, Taken> together = new TreeMap<>(other.choices);
        together.putAll(choices);
        return new Corner(new TreeMap<>(together));
    }

    /** The value a figure has at this corner, in the unit of its quantity. */
    public double value(String key, Figure<? extends Quantity> figure) {
        return switch (taken(key)) {
            case LOW -> figure.low().value();
            case TYPICAL -> figure.typical().value();
            case HIGH -> figure.high().value();
        };
    }
}
