package org.loomproof.workshop.planner.cut;

import java.util.Optional;
import org.loomproof.workshop.planner.coupling.Driving.Side;

/** What a wire is given, or is held at: a pole, or nothing. */
public enum Given {
    LOW,
    HIGH,
    NOTHING;

    /** That of a pole, or of none. */
    public static Given of(Optional<Side> pole) {
        return pole.map(side -> side == Side.HIGH ? HIGH : LOW).orElse(NOTHING);
    }

    /** The pole, where it is one. */
    public Optional<Side> pole() {
        return switch (this) {
            case LOW -> Optional.of(Side.LOW);
            case HIGH -> Optional.of(Side.HIGH);
            case NOTHING -> Optional.empty();
        };
    }

    /** A bit for each pole. */
    int bit() {
        return switch (this) {
            case LOW -> 1;
            case HIGH -> 2;
            case NOTHING -> 0;
        };
    }
}
