package org.loomproof.shop.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.check.ReadNotes;
import org.loomproof.intake.correct.Correction;
import org.loomproof.intake.correct.ReviewLine;
import org.loomproof.intake.correct.ShopMemory;
import org.loomproof.intake.decode.SourceLines;
import org.loomproof.workshop.brief.text.Problems;
import org.loomproof.workshop.problem.Checked;

/**
 * Notes with what a person put right in them.
 *
 * @param notes their entries put right
 * @param review each entry beside its lines, with what the shop once said about such a text
 * @param memory what the shop remembered, and these corrections
 * @param made the corrections, in their order
 */
public record PutRight(ReadNotes notes, List<ReviewLine> review, ShopMemory memory, List<Correction> made) {

    public PutRight {
        review = List.copyOf(review);
        made = List.copyOf(made);
    }

    /** The notes after the corrections, in their order, or every problem of those. */
    public static Checked<PutRight> of(
            SourceLines source, ReadNotes asRead, ShopMemory remembered, List<LineCorrection> corrections) {
        Problems problems = new Problems(source.name());
        List<ReviewLine> review = new ArrayList<>(ReviewLine.of(source, asRead, remembered));
        ShopMemory memory = remembered;
        List<Correction> all = new ArrayList<>();
        for (LineCorrection correction : corrections) {
            Optional<LineCorrection.Made> made = correction.in(review, problems);
            if (made.isPresent()) {
                review.set(
                        made.get().at(),
                        review.get(made.get().at()).corrected(made.get().correction()));
                memory = memory.with(made.get().correction());
                all.add(made.get().correction());
            }
        }
        List<Entry> entries = review.stream().map(ReviewLine::entry).toList();
        ReadNotes notes = corrections.isEmpty() ? asRead : ReadNotes.checked(entries, asRead.loose());
        return problems.orElse(new PutRight(notes, review, memory, all));
    }
}
