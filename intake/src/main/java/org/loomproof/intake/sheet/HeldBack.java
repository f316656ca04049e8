package org.loomproof.intake.sheet;

import org.loomproof.intake.check.Entry;
import org.loomproof.workshop.words.Phrase;

/**
 * An entry that cannot stand on a sheet yet.
 *
 * @param entry what was understood of it
 * @param reason what a sheet needs and the notes do not say
 * @param ask what would settle it
 */
public record HeldBack(Entry entry, Reason reason, Phrase ask) implements Placed {

    /** Why an entry stays off the sheet. */
    public enum Reason {
        /** Nobody knows what it is for. */
        ROLE_UNKNOWN,
        /** Nothing says how it switches, and its role does not either. */
        SWITCHING_NOT_SAID,
        /** What it shows at rest is not said, and no usual thing stands in. */
        REST_NOT_SAID,
        /** Its use and its way of switching exclude each other. */
        CONTRADICTION,
        /** The notes say that the vehicle has no such circuit. */
        ABSENT,
        /** It holds for the other side of the wheel. */
        OTHER_STEERING,
        /** It holds for vehicles with something that this one is known not to have. */
        OTHER_VEHICLE
    }
}
