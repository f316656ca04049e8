package org.loomproof.papers.letter;

import java.math.BigDecimal;
import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.joda.money.Money;
import org.loomproof.papers.page.Page;
import org.loomproof.papers.page.Wording;
import org.loomproof.papers.shelf.ArticleWords;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.goods.price.Labour;
import org.loomproof.workshop.goods.price.Quote;
import org.loomproof.workshop.goods.shelf.Article;
import org.loomproof.workshop.goods.shelf.Item;
import org.loomproof.workshop.plan.Plan;

/** What will be done, what it costs, how long that stands, and what it does not include. */
public final class QuoteLetter {

    /** What a customer asks about by itself; everything else stands in the line of small things. */
    private static final Set<Article.Kind> ASKED_ABOUT = EnumSet.of(
            Article.Kind.KIT, Article.Kind.EXTRA, Article.Kind.RELAY, Article.Kind.BUFFER, Article.Kind.PIN_SWITCH);

    private final Brief brief;
    private final Plan plan;
    private final Quote quote;
    private final Wording words;

    private QuoteLetter(Brief brief, Plan plan, Quote quote, Wording words) {
        this.brief = brief;
        this.plan = plan;
        this.quote = quote;
        this.words = words;
    }

    /** The quote as a page. */
    public static Page page(Brief brief, Plan plan, Quote quote, Wording words) {
        return LetterPage.of(new QuoteLetter(brief, plan, quote, words).letter(), brief, words);
    }

    /** The quote as text. */
    public static String text(Brief brief, Plan plan, Quote quote, Wording words) {
        return LetterText.of(new QuoteLetter(brief, plan, quote, words).letter());
    }

    private Letter letter() {
        Wishes wishes = new Wishes(brief, plan, words);
        List<Letter.Block> blocks = new ArrayList<>();
        if (!quote.unpriced().isEmpty()) {
            blocks.add(new Letter.Block.Beware(words.of("quote.unfinished"), List.of(unpriced())));
        }
        points(blocks, "quote.done", wishes.granted());
        points(blocks, "quote.waiting", wishes.waiting());
        points(blocks, "quote.refused", wishes.refused());
        ToSign.of(brief, words).ifPresent(blocks::add);
        blocks.add(new Letter.Block.Sums(words.of("quote.goods"), goods()));
        blocks.add(new Letter.Block.Sums(words.of("quote.work"), work()));
        blocks.add(new Letter.Block.Sums(words.of("quote.sum"), sums()));
        blocks.add(new Letter.Block.Points(
                words.of("quote.terms"),
                List.of(
                        words.of("quote.valid", quote.prices().validDays()),
                        words.of("quote.excluded"),
                        words.of("quote.stock-faults"))));
        blocks.add(new Letter.Block.Beware(
                words.of("quote.cautions"),
                List.of(words.of("quote.caution-battery"), words.of("caution.maker-law-licence"))));
        return new Letter(words.of("quote.title"), blocks);
    }

    private void points(List<Letter.Block> blocks, String heading, List<String> points) {
        if (!points.isEmpty()) {
            blocks.add(new Letter.Block.Points(words.of(heading), points));
        }
    }

    private String unpriced() {
        ArticleWords articles = new ArticleWords(words);
        List<String> names =
                quote.unpriced().stream().map(Item::article).map(articles::name).toList();
        return words.of("quote.unpriced", names);
    }

    /** What a customer would ask about by itself, then all small things in one line; the pick list has every one of them. */
    private List<Letter.Row> goods() {
        ArticleWords articles = new ArticleWords(words);
        List<Letter.Row> rows = new ArrayList<>();
        Money small = Money.zero(quote.prices().currency());
        for (Quote.GoodsLine line : quote.goods()) {
            if (!ASKED_ABOUT.contains(line.item().article().kind())) {
                small = line.costs().map(small::plus).orElse(small);
            } else {
                rows.add(new Letter.Row(
                        words.of(
                                "quote.so-many",
                                articles.amount(line.item()),
                                articles.name(line.item().article())),
                        line.costs().map(this::money).orElseGet(() -> words.of("quote.no-price")),
                        false));
            }
        }
        if (small.isPositive()) {
            rows.add(new Letter.Row(words.of("quote.small"), money(small), false));
        }
        rows.add(total("quote.goods-sum", quote.goodsSum()));
        return rows;
    }

    private List<Letter.Row> work() {
        Stream<Letter.Row> lines =
                quote.work().stream().map(line -> new Letter.Row(work(line.line()), money(line.costs()), false));
        return Stream.concat(lines, Stream.of(total("quote.work-sum", quote.workSum())))
                .toList();
    }

    /** How often, how long, and how long such work took before where that decides. */
    private String work(Labour.Line line) {
        String said = words.of("quote.work-line", words.of("work." + line.work().word()), line.times(), line.minutes());
        return line.spread()
                .map(spread -> words.of(
                        "quote.work-line-timed", said, spread.median(), spread.lower(), spread.upper(), spread.count()))
                .orElse(said);
    }

    private List<Letter.Row> sums() {
        return List.of(
                new Letter.Row(words.of("quote.net"), money(quote.net()), false),
                new Letter.Row(words.of("quote.tax", quote.prices().taxPercent()), money(quote.tax()), false),
                total("quote.gross", quote.gross()));
    }

    private Letter.Row total(String key, Money sum) {
        return new Letter.Row(words.of(key), money(sum), true);
    }

    /** The currency by its letters and the amount in the language's own figures, with as many decimals as the currency has. */
    private String money(Money money) {
        NumberFormat format = NumberFormat.getNumberInstance(words.messages().locale());
        int decimals = money.getCurrencyUnit().getDecimalPlaces();
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        BigDecimal amount = money.getAmount();
        return money.getCurrencyUnit().getCode() + "\u00A0" + format.format(amount);
    }
}
