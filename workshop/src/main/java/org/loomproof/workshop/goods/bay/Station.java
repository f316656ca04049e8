package org.loomproof.workshop.goods.bay;

import java.util.List;

/**
 * What is done without moving on.
 *
 * @param kind which part of the work it belongs to
 * @param panel the panel behind which it is; empty where nobody said, and where it is behind none
 * @param visits in working order
 */
public record Station(Kind kind, String panel, List<Visit> visits) {

    public Station {
        visits = List.copyOf(visits);
    }

    /** The parts of the work, in their order. */
    public enum Kind {
        GROUND,
        PANEL,
        MOUNT,
        CUT,
        FUSE
    }
}
