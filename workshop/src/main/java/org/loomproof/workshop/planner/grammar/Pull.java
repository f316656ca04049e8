package org.loomproof.workshop.planner.grammar;

import org.jspecify.annotations.Nullable;
import org.loomproof.workshop.planner.coupling.Driving.Side;

/** A resistor that gives a source a level while it is let go. */
public enum Pull {
    NONE(null),
    UP(Side.HIGH),
    DOWN(Side.LOW);

    private final @Nullable Side to;

    Pull(@Nullable Side to) {
        this.to = to;
    }

    /** True when it leads to that pole. */
    boolean leadsTo(Side pole) {
        return to == pole;
    }

    int resistors() {
        return this == NONE ? 0 : 1;
    }
}
