package org.loomproof.intake.field;

import org.loomproof.intake.decode.Origin;

/**
 * What was read of one field.
 *
 * @param value what it says
 * @param evidence how it came to be read, which decides how sure it is
 * @param origin where it stands
 * @param written as it stands there
 */
public record Found<T>(T value, Evidence evidence, Origin origin, String written) {

    /** The same, read on other evidence. */
    public Found<T> on(Evidence other) {
        return new Found<>(value, other, origin, written);
    }
}
