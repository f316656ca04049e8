package org.loomproof.shop.job;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.loomproof.papers.page.Wording;
import org.loomproof.papers.shelf.ArticleWords;
import org.loomproof.workshop.goods.change.PlanChange;
import org.loomproof.workshop.goods.change.Undo;
import org.loomproof.workshop.goods.shelf.Article;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

/** What changes between two plans, in sentences: the same on the terminal and on a page. */
public final class ChangeWords {

    private final Messages messages;

    /** Words come from these messages. */
    public ChangeWords(Messages messages) {
        this.messages = messages;
    }

    /** The leads that are decided otherwise, a sentence each. */
    public List<String> leads(PlanChange change) {
        return change.leads().stream()
                .map(lead -> messages.text("change.lead", lead.lead(), way(lead.before()), way(lead.after())))
                .toList();
    }

    /** How many more of each article, or fewer. */
    public List<String> articles(PlanChange change) {
        return change.articles().entrySet().stream()
                .map(more -> article(more.getKey(), more.getValue()))
                .toList();
    }

    /** The work of both plans. */
    public String minutes(PlanChange change) {
        return messages.text(
                "change.minutes",
                change.minutesBefore(),
                change.minutesAfter(),
                signed(change.minutesAfter().subtract(change.minutesBefore())));
    }

    /** What the customer pays by both plans, or that nobody can tell. */
    public String price(PlanChange change) {
        return change.prices()
                .map(p -> messages.text(
                        "change.price",
                        p.before().toString(),
                        p.after().toString(),
                        signed(p.after().getAmount().subtract(p.before().getAmount()))))
                .orElseGet(() -> messages.text("change.price-open"));
    }

    /** What is to be undone where the old plan was carried out. */
    public List<String> undo(PlanChange change) {
        return change.undo().stream().map(this::undo).toList();
    }

    private Phrase way(Optional<Hookup> hookup) {
        return hookup.map(h -> switch (h) {
                    case Hookup.Connect connect -> Phrase.of(connect.coupling());
                    case Hookup.Trim t -> Phrase.of("decision.trim");
                    case Hookup.CapAndKeep c -> Phrase.of("decision.cap");
                    case Hookup.Hold hold ->
                        Phrase.of("change.hold", hold.until().what());
                })
                .orElse(Phrase.of("change.not-there"));
    }

    private String article(Article article, BigDecimal more) {
        ArticleWords words = new ArticleWords(new Wording(messages));
        String sign = more.signum() > 0 ? "+" : "";
        return messages.text("change.article", sign + plain(words.amount(article, more)), plain(words.name(article)));
    }

    private String undo(Undo undo) {
        return switch (undo) {
            case Undo.RejoinCut(var circuit) -> messages.text("change.rejoin-cut", circuit);
            case Undo.TakeOffTap(var circuit) -> messages.text("change.take-off-tap", circuit);
            case Undo.TakeOutPart(var part, var lead) -> messages.text("change.take-out-part", part, lead);
        };
    }

    private static String plain(String words) {
        return words.replace('\u00A0', ' ');
    }

    private static String signed(BigDecimal more) {
        return (more.signum() > 0 ? "+" : "") + more.toPlainString();
    }
}
