package org.loomproof.workshop.brief.sheet;

import java.util.List;
import java.util.Optional;

/**
 * Something a person operates.
 *
 * @param id its name
 * @param kind what it is
 * @param positions at least two; the first is the one at rest
 * @param movesWithLocks whether it moves when something else works the locks, such as the driver's knob; empty where not said
 */
public record Operable(OperableId id, Kind kind, List<String> positions, Optional<Boolean> movesWithLocks) {

    /** Something of which nobody says whether it moves with the locks. */
    public Operable(OperableId id, Kind kind, List<String> positions) {
        this(id, kind, positions, Optional.empty());
    }

    /** The key's positions, in the order the hand turns it. */
    public static final List<String> KEY_POSITIONS = List.of("off", "accessory", "on", "start");

    /** The positions of everything that opens. */
    public static final List<String> OPENING_POSITIONS = List.of("closed", "open");

    /** The one operable that every vehicle has. */
    public static final OperableId KEY = new OperableId("key");

    /** What sort of thing is operated. */
    public enum Kind {
        KEY,
        DOOR,
        HOOD,
        TRUNK,
        CONTROL
    }

    public Operable {
        positions = List.copyOf(positions);
        if (positions.size() < 2) {
            throw new IllegalArgumentException(id + " needs at least two positions");
        }
    }

    /** The position when nobody touches it. */
    public String rest() {
        return positions.getFirst();
    }

    /** True for a control of two positions: it stays as it is put, and the car sees it there. */
    public boolean staysAsPut() {
        return kind == Kind.CONTROL && positions.size() == 2;
    }

    /** True for doors, hood and trunk. */
    public boolean isOpening() {
        return switch (kind) {
            case DOOR, HOOD, TRUNK -> true;
            case KEY, CONTROL -> false;
        };
    }
}
