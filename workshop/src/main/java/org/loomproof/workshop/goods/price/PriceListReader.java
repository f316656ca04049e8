package org.loomproof.workshop.goods.price;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;
import org.loomproof.workshop.brief.text.Problems;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.brief.text.TextFile;
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
    private static final Pattern DECIMAL = Pattern.compile("\\d{1,9}(\\.\\d{1,6})?");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("\\d{1,9},\\d{1,6}");
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

    private final Problems problems;
    /** What stands in a line of such a kind. */
    private record Stated(String value, long line) {}

    private final Map<Fact, Stated> facts = new EnumMap<>(Fact.class);
    private final Map<Work, BigDecimal> minutes = new EnumMap<>(Work.class);
    private final Map<Article.Kind, Map<String, BigDecimal>> prices = new EnumMap<>(Article.Kind.class);
    private final Map<String, Long> seen = new HashMap<>();

    private PriceListReader(String file) {
        problems = new Problems(file);
    }

    /** The list in the file, or every problem in it. */
    public static Checked<PriceList> read(Path file) {
        return switch (TextFile.read(file)) {
            case Checked.Good<SourceText>(var text) -> read(text);
            case Checked.Bad<SourceText>(var problems) -> new Checked.Bad<>(problems);
        };
    }

    /** The list in the text, or every problem in it. */
    public static Checked<PriceList> read(SourceText text) {
        return new PriceListReader(text.name()).list(text.text());
    }

    private Checked<PriceList> list(String text) {
        CSVFormat format =
                CSVFormat.DEFAULT.builder().setCommentMarker('#').setTrim(true).get();
        try (CSVParser parser = CSVParser.parse(text, format)) {
            boolean header = false;
            for (CSVRecord row : parser) {
                long line = parser.getCurrentLineNumber();
                if (header) {
                    row(row, line);
                } else {
                    header(row, line);
                    header = true;
                }
            }
        } catch (UncheckedIOException | IOException e) {
            bad(Place.file(problems.file()), String.valueOf(e.getMessage()), Phrase.of("problem.wanted.csv"));
        }
        Optional<CurrencyUnit> currency = currency();
        BigDecimal hour =
                needed(Fact.HOUR).flatMap(stated -> decimal(stated, Fact.HOUR)).orElse(BigDecimal.ZERO);
        BigDecimal tax = optional(Fact.TAX, BigDecimal.ZERO, MOST_TAX_PERCENT);
        BigDecimal days = optional(Fact.VALID, BigDecimal.valueOf(USUAL_DAYS), BigDecimal.valueOf(MOST_DAYS));
        return problems.orElse(
                new PriceList(currency.orElse(CurrencyUnit.EUR), hour, tax, days.intValue(), minutes, prices));
    }

    private void header(CSVRecord row, long line) {
        if (!row.toList().equals(HEADER)) {
            problems.add(
                    place(line, ""),
                    ProblemKind.WRONG_FORMAT,
                    String.join(",", row.toList()),
                    Phrase.of("problem.wanted.first-line", String.join(",", HEADER)));
        }
    }

    private void row(CSVRecord row, long line) {
        if (row.size() == 1 && row.get(0).isEmpty()) {
            return;
        }
        if (row.size() != HEADER.size()) {
            boolean comma = row.size() == HEADER.size() + 1;
            problems.add(
                    place(line, ""),
                    ProblemKind.WRONG_SHAPE,
                    String.join(",", row.toList()),
                    Phrase.of("problem.wanted.cells", HEADER.size()),
                    Phrase.of(comma ? "problem.hint.comma-cell" : "problem.hint.none"));
            return;
        }
        String article = row.get(0);
        String size = Article.plain(row.get(1));
        Long before = seen.putIfAbsent(article + "," + size, line);
        if (before != null) {
            problems.add(
                    place(line, article),
                    ProblemKind.DUPLICATE_KEY,
                    article + " " + row.get(1),
                    Phrase.of("problem.wanted.named-once"),
                    Phrase.of("problem.hint.given-before", String.valueOf(before)));
            return;
        }
        entry(article, size, row.get(2), line);
    }

    private void entry(String article, String size, String value, long line) {
        Fact fact = Words.all(Fact.class).get(article);
        Article.Kind kind = Words.all(Article.Kind.class).get(article);
        if (fact != null) {
            facts.put(fact, new Stated(value, line));
        } else if (kind != null) {
            decimal(value, article, line)
                    .ifPresent(price ->
                            prices.computeIfAbsent(kind, k -> new HashMap<>()).put(size, price));
        } else if (article.equals(MINUTES)) {
            minutes(size, value, line);
        } else {
            List<String> words = new ArrayList<>(Words.all(Fact.class).keySet());
            words.add(MINUTES);
            words.addAll(Words.all(Article.Kind.class).keySet());
            notOneOf(article, words, line);
        }
    }

    private void minutes(String size, String value, long line) {
        Work work = Words.all(Work.class).get(size);
        if (work == null) {
            notOneOf(size, List.copyOf(Words.all(Work.class).keySet()), line);
        } else {
            decimal(value, MINUTES, line).ifPresent(each -> minutes.put(work, each));
        }
    }

    private void notOneOf(String found, List<String> words, long line) {
        problems.add(
                place(line, ""),
                ProblemKind.NOT_ONE_OF,
                found,
                Phrase.of("problem.wanted.one-of", String.join(", ", words)),
                Words.hint(found, words));
    }

    private Optional<CurrencyUnit> currency() {
        return needed(Fact.CURRENCY).flatMap(code -> {
            try {
                return Optional.of(CurrencyUnit.of(code.value()));
            } catch (IllegalCurrencyException e) {
                bad(place(code.line(), "currency"), code.value(), Phrase.of("problem.wanted.currency"));
                return Optional.empty();
            }
        });
    }

    private Optional<Stated> needed(Fact fact) {
        Optional<Stated> stated = Optional.ofNullable(facts.get(fact));
        if (stated.isEmpty()) {
            problems.add(
                    Place.file(problems.file()),
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
            problems.add(
                    place(stated.line(), Words.of(fact)),
                    ProblemKind.OUT_OF_RANGE,
                    stated.value(),
                    Phrase.of("problem.wanted.between", "0", most.toPlainString()));
        }
        return read.orElse(usual);
    }

    private Optional<BigDecimal> decimal(Stated stated, Fact fact) {
        return decimal(stated.value(), Words.of(fact), stated.line());
    }

    private Optional<BigDecimal> decimal(String value, String path, long line) {
        if (DECIMAL.matcher(value).matches()) {
            return Optional.of(new BigDecimal(value));
        }
        Phrase hint = DECIMAL_COMMA.matcher(value).matches()
                ? Phrase.of("problem.hint.comma", value.replace(',', '.'))
                : Phrase.of("problem.hint.none");
        problems.add(
                place(line, path), ProblemKind.NOT_A_NUMBER, value, Phrase.of("problem.wanted.plain-decimal"), hint);
        return Optional.empty();
    }

    private Place place(long line, String path) {
        return new Place(problems.file(), (int) line, 1, path);
    }

    private void bad(Place at, String found, Phrase wanted) {
        problems.add(at, ProblemKind.WRONG_SHAPE, found, wanted);
    }
}
