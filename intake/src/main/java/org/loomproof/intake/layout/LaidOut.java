package org.loomproof.intake.layout;

import java.util.List;
import org.loomproof.intake.decode.Passage;

/**
 * A source parted into records.
 *
 * @param entries in the order of the text
 * @param loose lines that belong to no record: titles and what nobody can place
 */
public record LaidOut(List<RawEntry> entries, List<Passage> loose) {

    public LaidOut {
        entries = List.copyOf(entries);
        loose = List.copyOf(loose);
    }
}
