package org.loomproof.workshop.wiring;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.quantity.Quantity;

/** Takes each figure at one corner, and keeps the list of those that are ranges. */
public final class FigureBook {

    private final Corner corner;
    private final Map<String, RangedFigure> ranged = new LinkedHashMap<>();

    /** A book that takes figures at the corner. */
    public FigureBook(Corner corner) {
        this.corner = corner;
    }

    /** The figure's value at the corner. */
    public double take(String key, Figure<? extends Quantity> figure) {
        if (figure.isRange()) {
            ranged.putIfAbsent(key, new RangedFigure(key, figure));
        }
        return corner.value(key, figure);
    }

    /** The ranges among the figures taken so far, in the order they were first taken. */
    public List<RangedFigure> ranged() {
        return List.copyOf(ranged.values());
    }
}
