package org.loomproof.workshop.brief.sheet;

import java.util.Optional;

/**
 * Where a wire is found; an empty text means not said.
 *
 * @param panel the panel or trim that covers it
 * @param connector the connector it runs into
 * @param cavity its place in that connector
 * @param note free text
 * @param carriedBy what holds it there; empty where nobody said
 */
public record Where(String panel, String connector, String cavity, String note, Optional<Carrier> carriedBy) {

    /** What holds a wire where it is found. */
    public enum Carrier {
        /** The body, or something fixed to it. */
        BODY,
        /** A door, a lid or a hatch: on a hinge or a rail. */
        DOOR,
        /** A panel that comes off, and the wire with it. */
        PANEL
    }

    /** A place of which nobody said what holds the wire there. */
    public Where(String panel, String connector, String cavity, String note) {
        this(panel, connector, cavity, note, Optional.empty());
    }
}
