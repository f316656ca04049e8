package org.loomproof.pages.desk;

import java.util.Optional;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardLine;

/**
 * A vehicle sheet with a kit: what the nightly proof of the two came to.
 *
 * @param sheet of the vehicle
 * @param kit to be fitted
 * @param sum of the program and all texts as they are now
 * @param last what was found last; nothing when they were never proven
 */
public record Fit(Card sheet, Card kit, String sum, Optional<CardLine> last) {

    /** True when it stands for the texts and the program as they are. */
    public boolean isOfNow() {
        return last.filter(line -> line.headline().get("sum").equals(sum)).isPresent();
    }

    /** True when nobody said what is ordered with the kit, so that there is nothing to prove. */
    public boolean lacksOrder() {
        return kit.get(Shared.USUAL_ORDER).isBlank();
    }

    /** True when it is to be proven the next night. */
    public boolean isDue() {
        return !isOfNow() && !lacksOrder();
    }

    /** How it stands, as a word of the message files: a verdict of now, {@code due} or {@code no-order}. */
    public String standing() {
        if (lacksOrder()) {
            return "no-order";
        }
        return isOfNow() ? last.orElseThrow().headline().get("verdict") : "due";
    }

    /** As the subject of a task: names of cards only. */
    String subject() {
        return subject(sheet, kit);
    }

    static String subject(Card sheet, Card kit) {
        return sheet.id() + " " + kit.id();
    }
}
