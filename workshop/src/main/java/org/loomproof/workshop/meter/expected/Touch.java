package org.loomproof.workshop.meter.expected;

import org.loomproof.workshop.brief.sheet.CircuitId;

/**
 * Where the red lead of the meter is; the black one is on bare metal of the body.
 *
 * @param circuit whose wire it is on
 * @param end which part of the wire
 */
public record Touch(CircuitId circuit, End end) {

    /** The wire before it is cut, or one loose end after. */
    public enum End {
        WHOLE,
        /** The side of what the sheet lists before the wire: of a starter wire the switch's. */
        BEFORE_CUT,
        AFTER_CUT
    }
}
