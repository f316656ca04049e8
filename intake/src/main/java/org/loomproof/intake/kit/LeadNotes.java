package org.loomproof.intake.kit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.decode.SourceLines;
import org.loomproof.intake.layout.LaidOut;
import org.loomproof.intake.layout.LayoutReader;
import org.loomproof.intake.layout.RawEntry;

/**
 * A list of leads as it was understood.
 *
 * @param leads in the order of the text
 * @param loose lines that belong to no lead
 */
public record LeadNotes(List<LeadReading> leads, List<Passage> loose) {

    public LeadNotes {
        leads = List.copyOf(leads);
        loose = List.copyOf(loose);
    }

    /** Understands the lines as far as they can be; what is not understood is kept and can be shown. */
    public static LeadNotes of(SourceLines source) {
        LaidOut laidOut = LayoutReader.read(source);
        List<LeadReading> leads = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (RawEntry raw : laidOut.entries()) {
            leads.add(new LeadReader(raw).read(leads.size() + 1, ids));
        }
        return new LeadNotes(leads, laidOut.loose());
    }
}
