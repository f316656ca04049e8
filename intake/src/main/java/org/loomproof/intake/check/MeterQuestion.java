package org.loomproof.intake.check;

import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.words.Phrase;

/** What a meter shows on the right wire of a role, as a question to be settled in the car. */
public final class MeterQuestion {

    private MeterQuestion() {}

    /** How to tell the wire of that role from any other. */
    public static Phrase of(CircuitRole role) {
        return Phrase.of("intake.meter." + role.word());
    }
}
