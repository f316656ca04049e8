package org.loomproof.workshop.plan.file;

import org.loomproof.workshop.brief.text.Cursor;
import org.loomproof.workshop.words.Phrase;

/** A sentence taken from a plan file: it has the language it was written in, and is handed on as it is. */
final class Written {

    private static final String KEY = "plan.file.as-written";

    private Written() {}

    static Phrase phrase(Cursor at) {
        return Phrase.of(KEY, at.text());
    }

    /** A sentence nobody wrote. */
    static Phrase nothing() {
        return Phrase.of(KEY, "");
    }
}
