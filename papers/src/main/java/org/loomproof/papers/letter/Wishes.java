package org.loomproof.papers.letter;

import java.util.List;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.Refusal;

/** What became of each wish, in the customer's words. */
record Wishes(Brief brief, Plan plan, Wording words) {

    /** What the customer gets. */
    List<String> granted() {
        return wishes().stream()
                .filter(this::isServed)
                .filter(wish -> !isWaiting(wish))
                .map(this::said)
                .toList();
    }

    /** What waits for a measurement in the car. */
    List<String> waiting() {
        return wishes().stream().filter(this::isWaiting).map(this::said).toList();
    }

    /** What was turned down, with the reason and what would make it possible. */
    List<String> refused() {
        return plan.refusals().stream().map(this::refused).toList();
    }

    private String refused(Refusal refusal) {
        return words.of(
                "letter.refused",
                words.wish(refusal.wish()),
                words.of(refusal.because()),
                words.of(refusal.possibleIf()));
    }

    private String said(Wish wish) {
        return wish == Wish.WATCH_OPENINGS
                ? words.of("customer.watch-openings", openings())
                : words.of("customer." + wish.word());
    }

    /** Names are the shop's own, and are told without the hyphens that tie their words together. */
    private List<String> openings() {
        return brief.order().watched().stream()
                .map(opening -> opening.value().replace('-', ' '))
                .toList();
    }

    private List<Wish> wishes() {
        return brief.order().wishes().stream()
                .filter(wish -> wish != Wish.BASICS)
                .toList();
    }

    private boolean isServed(Wish wish) {
        return plan.hookups().stream().anyMatch(h -> h instanceof Hookup.Connect c && c.serves() == wish);
    }

    private boolean isWaiting(Wish wish) {
        return plan.hookups().stream().anyMatch(h -> h instanceof Hookup.Hold hold && hold.serves() == wish);
    }
}
