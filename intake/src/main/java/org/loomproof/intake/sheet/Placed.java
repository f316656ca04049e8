package org.loomproof.intake.sheet;

import org.loomproof.intake.check.Entry;
import org.loomproof.workshop.brief.sheet.Circuit;

/** What becomes of an entry: it stands on the sheet, or waits for something to be settled. */
public sealed interface Placed permits Placed.OnSheet, HeldBack {

    /** The entry. */
    Entry entry();

    /** It stands on the sheet as this circuit. */
    record OnSheet(Entry entry, Circuit circuit) implements Placed {}
}
