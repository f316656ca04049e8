package org.loomproof.workshop.goods.price;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;
import org.loomproof.workshop.brief.text.CsvLines;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.goods.shelf.Article;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Phrase;

/**
 * Reads a price list: comma-separated lines {@code article,size,price}. Beside articles there are the lines
 * {@code currency,,EUR}, {@code hour,,78.00}, {@code tax,,20}, {@code valid,,30} and {@code minutes,tap,6}; the first two must
 * stand once. Lines that begin with {@code #} are passed over.
 */
public final class PriceListReader {

    private static final List<String> HEADER = List.of("article", "size", "price");
    private static final String MINUTES = "minutes";
    private static final int USUAL_DAYS = 30;
    private static final int MOST_DAYS = 366;
    private static final BigDecimal MOST_TAX_PERCENT = BigDecimal.valueOf(100);

    /** What a list says of the shop, once each. */
    private enum Fact {
        CURRENCY,
        HOUR,
        TAX,
        VALID
    }

    /** What stands in a line of such a kind. */
    private record Stated(String value, long line) {}

    private final CsvLines lines;
    private final Map<Fact, Stated> facts = new EnumMap<>(Fact.class);
    private final Map<Work, BigDecimal> minutes = new EnumMap<>(Work.class);
    private final Map<Article.Kind, Map<String, BigDecimal>> prices = new EnumMap<>(Article.Kind.class);

    private PriceListReader(String file) {
        lines = new CsvLines(file, HEADER);
    }

    /** The list in the file, or every problem in it. */
    public static Checked<PriceList> read(Path file) {
        return CsvLines.read(file, PriceListReader::read);
    }

    /** The list in the text, or every problem in it. */
    public static Checked<PriceList> read(SourceText text) {
        return new PriceListReader(text.name()).list(text.text());
    }

    private Checked<PriceList> list(String text) {
        lines.of(text).forEach(this::row);
        Optional<CurrencyUnit> currency = currency();
        BigDecimal hour =
                needed(Fact.HOUR).flatMap(stated -> decimal(stated, Fact.HOUR)).orElse(BigDecimal.ZERO);
        BigDecimal tax = optional(Fact.TAX, BigDecimal.ZERO, MOST_TAX_PERCENT);
        BigDecimal days = optional(Fact.VALID, BigDecimal.valueOf(USUAL_DAYS), BigDecimal.valueOf(MOST_DAYS));
        return lines.problems()
                .orElse(new PriceList(currency.orElse(CurrencyUnit.EUR), hour, tax, days.intValue(), minutes, prices));
    }

    private void row(CsvLines.Line row) {
        String article = row.cells().getFirst();
        String size = Article.plain(row.cells().get(1));
        if (lines.isNew(article + "," + size, article + " " + row.cells().get(1), row)) {
            entry(article, size, row.cells().getLast(), row.number());
        }
    }

    private void entry(String article, String size, String value, long line) {
        Fact fact = Words.all(Fact.class).get(article);
        Article.Kind kind = Words.all(Article.Kind.class).get(article);
        if (fact != null) {
            facts.put(fact, new Stated(value, line));
        } else if (kind != null) {
            lines.decimal(value, article, line)
                    .ifPresent(price ->
                            prices.computeIfAbsent(kind, k -> new HashMap<>()).put(size, price));
        } else if (article.equals(MINUTES)) {
            lines.word(Work.class, size, line)
                    .ifPresent(work -> lines.decimal(value, MINUTES, line).ifPresent(each -> minutes.put(work, each)));
        } else {
            List<String> words = new ArrayList<>(Words.all(Fact.class).keySet());
            words.add(MINUTES);
            words.addAll(Words.all(Article.Kind.class).keySet());
            lines.notOneOf(article, words, line);
        }
    }

    private Optional<CurrencyUnit> currency() {
        return needed(Fact.CURRENCY).flatMap(code -> {
            try {
                return Optional.of(CurrencyUnit.of(code.value()));
            } catch (IllegalCurrencyException e) {
                lines.problems()
                        .add(
                                lines.place(code.line(), "currency"),
                                ProblemKind.WRONG_SHAPE,
                                code.value(),
                                Phrase.of("problem.wanted.currency"));
                return Optional.empty();
            }
        });
    }

    private Optional<Stated> needed(Fact fact) {
        Optional<Stated> stated = Optional.ofNullable(facts.get(fact));
        if (stated.isEmpty()) {
            lines.problems()
                    .add(
                            Place.file(lines.problems().file()),
                            ProblemKind.MISSING,
                            "",
                            Phrase.of("problem.wanted.price-line", Words.of(fact)));
        }
        return stated;
    }

    private BigDecimal optional(Fact fact, BigDecimal usual, BigDecimal most) {
        Stated stated = facts.get(fact);
        if (stated == null) {
            return usual;
        }
        Optional<BigDecimal> read = decimal(stated, fact);
        if (read.filter(v -> v.compareTo(most) > 0).isPresent()) {
            lines.problems()
                    .add(
                            lines.place(stated.line(), Words.of(fact)),
                            ProblemKind.OUT_OF_RANGE,
                            stated.value(),
                            Phrase.of("problem.wanted.between", "0", most.toPlainString()));
        }
        return read.orElse(usual);
    }

    private Optional<BigDecimal> decimal(Stated stated, Fact fact) {
        return lines.decimal(stated.value(), Words.of(fact), stated.line());
    }
}
