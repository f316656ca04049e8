package org.loomproof.workshop.planner.grammar;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.workshop.planner.coupling.Driving.Side;

/**
 * A relay's coil with its clamp diode.
 *
 * @param driver what works it
 * @param pole where its other end hangs
 * @param isolated whether a diode stands between the driver and the coil
 */
public record Coil(Driver driver, Side pole, boolean isolated) {

    /** What works a coil. */
    public enum Driver {
        SOURCE,
        BUFFER,
        FIRST_MAKE,
        FIRST_BREAK
    }

    /** The coils that the first relay, or a second one beside it, may have. */
    static List<Coil> beside(boolean buffered) {
        List<Coil> all = new ArrayList<>();
        for (Side pole : Side.values()) {
            all.add(new Coil(Driver.SOURCE, pole, false));
            all.add(new Coil(Driver.SOURCE, pole, true));
        }
        if (buffered) {
            all.add(new Coil(Driver.BUFFER, Side.HIGH, false));
        }
        return all;
    }

    /** The coils that only a second relay may have: those that hang on the first one's contact. */
    static List<Coil> behindFirst() {
        return List.of(new Coil(Driver.FIRST_MAKE, Side.HIGH, false), new Coil(Driver.FIRST_BREAK, Side.HIGH, false));
    }

    /** True for one that hangs on the first relay's contact. */
    boolean isBehindFirst() {
        return driver == Driver.FIRST_MAKE || driver == Driver.FIRST_BREAK;
    }

    int diodes() {
        return isolated ? 2 : 1;
    }
}
