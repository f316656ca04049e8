package org.loomproof.pages.desk;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomproof.book.card.Card;
import org.loomproof.shop.job.TextRun;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.goods.price.HistoryReader;
import org.loomproof.workshop.goods.price.PriceListReader;
import org.loomproof.workshop.goods.shelf.StockReader;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.problem.ProblemText;
import org.loomproof.workshop.words.Messages;

/** The texts that a job is planned from, and what is wrong with them: the same problems and hints that the files get. */
public final class Texts {

    /** The entries of a job that are such texts. */
    public static final List<String> OF_A_JOB = List.of("order", "sheet", "kit");

    /** The entry with the plan as somebody changed it by hand: what was decided, without the texts it was decided for. */
    public static final String BY_HAND = "by-hand";

    /** What a verdict is about. */
    public static final List<String> BEHIND_A_VERDICT =
            Stream.concat(OF_A_JOB.stream(), Stream.of(BY_HAND)).toList();

    /** Those of the shop itself. */
    public static final List<String> OF_THE_SHOP = List.of(Prices.PRICES, Prices.STOCK, Prices.HISTORY);

    private final Messages messages;

    public Texts(Messages messages) {
        this.messages = messages;
    }

    /** Every problem of a text, as a line each; none when it can be used. */
    public List<String> problems(String name, String text, Optional<Card> job) {
        TextRun run = new TextRun(messages);
        SourceText source = new SourceText(name + (OF_THE_SHOP.contains(name) ? ".csv" : ".yaml"), text);
        return lines(
                switch (name) {
                    case "sheet" -> run.briefs().readSheet(source);
                    case "kit" -> run.briefs().readKit(source);
                    case "order" -> run.briefs().readOrder(source, job.flatMap(card -> sheet(run, card)));
                    case Prices.HISTORY -> HistoryReader.read(source);
                    case Prices.STOCK -> StockReader.read(source);
                    default -> PriceListReader.read(source);
                });
    }

    /** Every problem of a job's plan as it was changed by hand. */
    public List<String> problemsByHand(String text, Card job) {
        return lines(Planning.byHand(new TextRun(messages), job, text));
    }

    private static Optional<Sheet> sheet(TextRun run, Card job) {
        return switch (run.briefs().readSheet(Planning.text(job, "sheet"))) {
            case Checked.Good<Sheet>(Sheet sheet) -> Optional.of(sheet);
            case Checked.Bad<Sheet> ignored -> Optional.empty();
        };
    }

    private List<String> lines(Checked<?> read) {
        return switch (read) {
            case Checked.Good<?> ignored -> List.of();
            case Checked.Bad<?>(List<Problem> problems) ->
                problems.stream()
                        .map(problem -> ProblemText.line(problem, messages))
                        .toList();
        };
    }
}
