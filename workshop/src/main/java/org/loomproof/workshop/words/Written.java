package org.loomproof.workshop.words;

import java.util.Locale;

/** What each reader reads in units of their own; as text it is in those that plans and files are in. */
public interface Written {

    /** As a reader of that locale wants it, by its {@link ReaderUnits}. */
    String in(Locale reader);
}
