package org.loomproof.pages.bay;

import java.util.List;
import org.loomproof.workshop.words.Phrase;

/**
 * One thing to read at a wire, with what was read.
 *
 * @param at what the car does meanwhile
 * @param when the same in words
 * @param shows what must be shown
 * @param read what was shown, the first one first
 */
public record MeterRow(MeterAt at, Phrase when, Phrase shows, List<Shown> read) {

    /**
     * A reading that was taken.
     *
     * @param id its entry in the work log
     * @param value as it was typed, with its unit
     * @param isAsExpected whether it is what must be shown
     */
    public record Shown(String id, String value, boolean isAsExpected) {}

    public MeterRow {
        read = List.copyOf(read);
    }
}
