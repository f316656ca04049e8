package org.loomproof.intake.check;

import org.loomproof.intake.decode.Origin;
import org.loomproof.intake.field.Evidence;

/**
 * A field as it was understood.
 *
 * @param value what it says
 * @param evidence how it came to be read
 * @param sure how sure, from 0 to 1: the share of such readings that prove right
 * @param origin where it stands
 * @param written as it stands there
 */
public record Answer<T>(T value, Evidence evidence, double sure, Origin origin, String written) {

    /** The same, as sure as what the writer doubted. */
    Answer<T> contested() {
        return new Answer<>(value, evidence, Math.min(sure, Sureness.DOUBTED), origin, written);
    }
}
