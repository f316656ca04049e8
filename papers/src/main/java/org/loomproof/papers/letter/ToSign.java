package org.loomproof.papers.letter;

import java.util.List;
import java.util.Optional;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.order.DeclaredChange;

/** What the car does otherwise afterwards, told to the customer and signed: in the quote before the work, and at the hand-over. */
final class ToSign {

    private ToSign() {}

    /** The block of what is declared; empty where nothing is. */
    static Optional<Letter.Block> of(Brief brief, Wording words) {
        List<DeclaredChange> changes = brief.order().changes();
        return changes.isEmpty()
                ? Optional.empty()
                : Optional.of(new Letter.Block.Signed(
                        words.of("letter.changes"),
                        changes.stream().map(DeclaredChange::told).toList(),
                        List.of(words.of("letter.customer"), words.of("bench-card.date"))));
    }
}
