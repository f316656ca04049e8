package org.loomproof.intake.check;

import org.loomproof.intake.field.Behaviour;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.words.Phrase;

/** Ways of switching in the reader's language. */
public final class SwitchingWords {

    private SwitchingWords() {}

    /** The way as a term. */
    public static Phrase of(Behaviour.Kind kind) {
        return Phrase.of("intake.switching." + Words.of(kind));
    }
}
