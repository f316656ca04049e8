package org.loomproof.workshop.sizing;

import java.util.List;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.wire.Conductor;

/**
 * Which wire goes into a run: thick enough for the drop allowed, for the current, and for the fuse in front of it.
 *
 * <p>Drop is {@code I · R' · L} for the run itself; the body as return is left out here and is part of the proof. The
 * current a size may carry is taken as its fuse ceiling.
 */
public final class WireChoice {

    private WireChoice() {}

    /** Volts lost along a run. */
    public static Volts drop(Conductor conductor, Amps current, Metres length) {
        return new Volts(current.value() * conductor.ohmsPerMetre() * length.value());
    }

    /**
     * The thinnest of the sizes that does, or the thickest when none does.
     *
     * @param sizes thinnest first
     * @param current what flows for long
     * @param length one way
     * @param allowed volts that may be lost along the run
     * @param atLeast the fuse in front of it, or the current again when there is none
     */
    public static Conductor choose(List<Conductor> sizes, Amps current, Metres length, Volts allowed, Amps atLeast) {
        return sizes.stream()
                .filter(Conductor::bought)
                .filter(size -> size.fuseCeiling().value() >= Math.max(atLeast.value(), current.value()))
                .filter(size -> drop(size, current, length).value() <= allowed.value())
                .findFirst()
                .orElseGet(sizes::getLast);
    }
}
