package org.loomproof.cli.report;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.goods.change.PlanChange;
import org.loomproof.workshop.goods.change.Undo;
import org.loomproof.workshop.goods.shelf.Article;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

/** What changes between two plans, and nothing else, for the terminal. */
public final class ChangeReport {

    private final Messages messages;

    /** Words come from these messages. */
    public ChangeReport(Messages messages) {
        this.messages = messages;
    }

    /** The lines; the last ones say how to prove the new plan. */
    public List<String> lines(PlanChange change, String plan) {
        Lines lines = new Lines();
        if (change.isNothing()) {
            lines.wrap(messages.text("change.nothing"), "  ");
            return lines.all();
        }
        change.leads()
                .forEach(lead -> lines.wrap(
                        messages.text("change.lead", lead.lead(), way(lead.before()), way(lead.after())), "    "));
        lines.gap();
        change.articles().forEach((article, more) -> lines.wrap(article(article, more), "    "));
        lines.gap();
        lines.wrap(
                messages.text(
                        "change.minutes",
                        change.minutesBefore(),
                        change.minutesAfter(),
                        signed(change.minutesAfter().subtract(change.minutesBefore()))),
                "  ");
        lines.wrap(
                change.prices()
                        .map(p -> messages.text(
                                "change.price",
                                p.before().toString(),
                                p.after().toString(),
                                signed(p.after().getAmount().subtract(p.before().getAmount()))))
                        .orElseGet(() -> messages.text("change.price-open")),
                "  ");
        lines.gap();
        change.undo().forEach(each -> lines.wrap(undo(each), "    "));
        lines.wrap(messages.text("change.prove-after", plan), "    ");
        return lines.all();
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
        String name = messages.text("article." + article.kind().word(), article.size());
        return messages.text("change.article", signed(more), name);
    }

    private String undo(Undo undo) {
        return switch (undo) {
            case Undo.RejoinCut(var circuit) -> messages.text("change.rejoin-cut", circuit);
            case Undo.TakeOffTap(var circuit) -> messages.text("change.take-off-tap", circuit);
            case Undo.TakeOutPart(var part, var lead) -> messages.text("change.take-out-part", part, lead);
        };
    }

    private static String signed(BigDecimal more) {
        return (more.signum() > 0 ? "+" : "") + more.toPlainString();
    }
}
