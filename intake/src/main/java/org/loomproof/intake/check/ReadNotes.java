package org.loomproof.intake.check;

import java.util.List;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.decode.SourceLines;
import org.loomproof.intake.layout.LaidOut;
import org.loomproof.intake.layout.LayoutReader;

/**
 * Wiring notes as they were understood.
 *
 * @param entries one a circuit, in the order of the text
 * @param loose lines that belong to no circuit: titles, headings, and what nobody could place
 */
public record ReadNotes(List<Entry> entries, List<Passage> loose) {

    public ReadNotes {
        entries = List.copyOf(entries);
        loose = List.copyOf(loose);
    }

    /** Understands the lines as far as they can be; what is not understood is kept and can be shown. */
    public static ReadNotes of(SourceLines source) {
        LaidOut laidOut = LayoutReader.read(source);
        return new ReadNotes(laidOut.entries().stream().map(EntryReader::read).toList(), laidOut.loose());
    }
}
