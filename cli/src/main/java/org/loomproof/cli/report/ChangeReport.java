package org.loomproof.cli.report;

import java.util.List;
import org.loomproof.shop.job.ChangeWords;
import org.loomproof.workshop.goods.change.PlanChange;
import org.loomproof.workshop.words.Messages;

/** What changes between two plans, and nothing else, for the terminal. */
public final class ChangeReport {

    private final Messages messages;
    private final ChangeWords words;

    /** Words come from these messages. */
    public ChangeReport(Messages messages) {
        this.messages = messages;
        this.words = new ChangeWords(messages);
    }

    /** The lines; the last ones say how to prove the new plan. */
    public List<String> lines(PlanChange change, String plan) {
        Lines lines = new Lines();
        if (change.isNothing()) {
            lines.wrap(messages.text("change.nothing"), "  ");
            return lines.all();
        }
        words.leads(change).forEach(lead -> lines.wrap(lead, "    "));
        lines.gap();
        words.articles(change).forEach(article -> lines.wrap(article, "    "));
        lines.gap();
        lines.wrap(words.minutes(change), "  ");
        lines.wrap(words.price(change), "  ");
        lines.gap();
        words.undo(change).forEach(each -> lines.wrap(each, "    "));
        lines.wrap(messages.text("change.prove-after", plan), "    ");
        return lines.all();
    }
}
