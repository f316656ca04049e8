package org.loomproof.pages.desk;

import java.util.Map;
import java.util.Optional;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.card.Listing;
import org.loomproof.book.store.OpenBook;
import org.loomproof.intake.correct.Correction;
import org.loomproof.intake.correct.ShopMemory;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.problem.Checked;

/** What the shop remembers of the readings it put right, one text in the book. */
public final class Memory {

    private static final String TEXT = "memory";
    private static final String CHANGED = "memory.changed";

    private final OpenBook book;

    public Memory(OpenBook book) {
        this.book = book;
    }

    /** What is remembered; nothing before the first correction. */
    public ShopMemory all() {
        return card().map(Memory::in).orElse(ShopMemory.empty());
    }

    /** Remembers one correction more; of two people who do so at once both are heard. */
    public void add(Author who, Correction correction) {
        Optional<Card> there = card();
        if (there.isEmpty()) {
            book.cards()
                    .add(
                            CardKind.MEMORY,
                            who,
                            CHANGED,
                            entries(ShopMemory.empty().with(correction)));
            return;
        }
        book.cards().amend(there.orElseThrow(), who, CHANGED, now -> entries(in(now).with(correction)));
    }

    private Optional<Card> card() {
        return book.cards().list(Listing.all(CardKind.MEMORY, 1)).stream()
                .findFirst()
                .flatMap(line -> book.cards().find(line.id()));
    }

    private static Map<String, String> entries(ShopMemory memory) {
        return Map.of("title", TEXT, TEXT, memory.write());
    }

    private static ShopMemory in(Card card) {
        return switch (ShopMemory.read(new SourceText("memory.csv", card.get(TEXT)))) {
            case Checked.Good<ShopMemory>(ShopMemory memory) -> memory;
            // Written by nobody but this class; were it broken, suggestions would be missing, and nothing else.
            case Checked.Bad<ShopMemory> ignored -> ShopMemory.empty();
        };
    }
}
