package org.loomproof.shop.notes;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.intake.check.ReadNotes;
import org.loomproof.intake.correct.ReviewLine;
import org.loomproof.intake.correct.ShopMemory;
import org.loomproof.intake.decode.SourceLines;
import org.loomproof.intake.fact.VehicleFacts;
import org.loomproof.intake.sheet.DraftSheet;
import org.loomproof.intake.sheet.Merge;
import org.loomproof.intake.sheet.Needs;

/**
 * Wiring notes that were read.
 *
 * @param source their lines
 * @param notes what was understood
 * @param review each entry beside its lines, with what the shop once said about such a text
 * @param memory what the shop remembers, with what was put right in this reading
 * @param draft what of it goes on a sheet, and what is held back
 * @param missing circuits that the order needs and nobody speaks of; empty without an order
 * @param vehicle what the notes say of the vehicle; shown, never taken by itself
 * @param missingFacts facts of the vehicle that are to be filled in, each with what may stand there
 * @param merge how it was merged into a sheet that was there, when it was
 * @param text the sheet as a file
 * @param table the entries as a clean table
 */
public record SheetReading(
        SourceLines source,
        ReadNotes notes,
        List<ReviewLine> review,
        ShopMemory memory,
        DraftSheet draft,
        List<Needs.Missing> missing,
        VehicleFacts vehicle,
        Map<String, String> missingFacts,
        Optional<Merge> merge,
        String text,
        String table) {

    public SheetReading {
        review = List.copyOf(review);
        missing = List.copyOf(missing);
    }

    /** True when the file can be used as it is and nothing is left to be settled. */
    public boolean isSettled() {
        return notes.findings().isEmpty()
                && draft.heldBack().isEmpty()
                && missing.isEmpty()
                && missingFacts.isEmpty()
                && merge.map(m -> m.conflicts().isEmpty()).orElse(true)
                && !draft.circuits().isEmpty();
    }
}
