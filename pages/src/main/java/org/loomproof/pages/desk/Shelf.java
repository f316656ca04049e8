package org.loomproof.pages.desk;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BinaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.card.Listing;
import org.loomproof.book.store.OpenBook;
import org.loomproof.workshop.brief.text.CsvLines;
import org.loomproof.workshop.goods.price.PriceList;
import org.loomproof.workshop.goods.shelf.Article;
import org.loomproof.workshop.goods.shelf.Item;
import org.loomproof.workshop.goods.shelf.PickList;

/**
 * Parts of the shop: what lies on the shelf, which jobs that are not yet prepared will take how much of it, and what is to be ordered.
 * When the loom of a job is prepared its parts are off the shelf.
 */
public final class Shelf {

    /** The entry of a job with what its plan takes, a line {@code article,size,count} each as in a file of stock. */
    static final String NEEDS = "needs";

    private static final List<String> HEADER = List.of("article", "size", "count");
    private static final int MOST = 1_000;

    private final OpenBook book;

    public Shelf(OpenBook book) {
        this.book = book;
    }

    /**
     * An article of the shop.
     *
     * @param price of one, without tax, at the currency of the price list; nothing when the list does not know it
     * @param there how many lie on the shelf; nothing when nobody counted them
     * @param needed how many the jobs take
     * @param jobs that take it
     */
    public record Row(
            Article article,
            Optional<BigDecimal> price,
            Optional<BigDecimal> there,
            BigDecimal needed,
            List<Card> jobs) {

        public Row {
            jobs = List.copyOf(jobs);
        }

        /** A count of it with its unit: metres, or pieces, which have none. */
        public String counted(BigDecimal count) {
            return count.toPlainString() + (article.kind().per() == Article.Per.METRE ? " m" : "");
        }

        /** How many are to be ordered; nothing when nobody counted what is there. */
        public Optional<BigDecimal> toOrder() {
            return there.map(count -> needed.subtract(count).max(BigDecimal.ZERO));
        }
    }

    /** So much of an article, under the name that whoever wrote it down gave it. */
    private record Counted(Article named, BigDecimal count) {

        /** As the articles of different hands are compared. */
        Article plain() {
            return new Article(named.kind(), Article.plain(named.size()));
        }

        Counted plus(Counted more) {
            return new Counted(named, count.add(more.count));
        }

        String line() {
            String size = named.size();
            String cell = size.matches("[^,;\t\"#]*") ? size : "\"" + size.replace("\"", "\"\"") + "\"";
            return "%s,%s,%s".formatted(named.kind().word(), cell, count.toPlainString());
        }
    }

    /** What a plan takes, the kit and what the shop adds; what came in the kit's box is not counted by itself. */
    static String needs(PickList list) {
        Map<Article, Counted> needs = new TreeMap<>();
        for (Item item : list.items()) {
            if (item.from() == Item.From.SHELF || item.article().kind() == Article.Kind.KIT) {
                Counted counted = new Counted(item.article(), item.amount());
                needs.merge(counted.plain(), counted, Counted::plus);
            }
        }
        return text(needs);
    }

    private static String text(Map<Article, Counted> counts) {
        return counts.values().stream()
                .map(Counted::line)
                .collect(Collectors.joining("\n", String.join(",", HEADER) + "\n", "\n"));
    }

    /** The lines of a text that was found to be without a problem when it was kept. */
    private static Map<Article, Counted> counts(String text) {
        Map<Article, Counted> counts = new TreeMap<>();
        CsvLines lines = new CsvLines(NEEDS, HEADER);
        for (CsvLines.Line line : lines.of(text)) {
            List<String> cells = line.cells();
            lines.word(Article.Kind.class, cells.getFirst(), line.number()).ifPresent(kind -> {
                Counted counted = new Counted(new Article(kind, cells.get(1)), new BigDecimal(cells.getLast()));
                counts.put(counted.plain(), counted);
            });
        }
        return counts;
    }

    private static Map<Article, Counted> needs(Card job) {
        return job.entries().find(NEEDS).map(Shelf::counts).orElse(Map.of());
    }

    private Map<Article, Counted> there() {
        return Prices.texts(book).stock().map(text -> counts(text.text())).orElse(Map.of());
    }

    /** Every article that lies there or is needed, in the order of the shelf. */
    public List<Row> rows() {
        Optional<PriceList> prices = Prices.list(book);
        Map<Article, Counted> there = there();
        Map<Article, List<Card>> jobs = new HashMap<>();
        Map<Article, Counted> needed = new TreeMap<>();
        for (Card job : waiting()) {
            needs(job).forEach((article, counted) -> {
                jobs.computeIfAbsent(article, none -> new ArrayList<>()).add(job);
                needed.merge(article, counted, Counted::plus);
            });
        }
        Map<Article, Counted> all = new TreeMap<>(there);
        all.putAll(needed);
        return all.entrySet().stream()
                .map(entry -> new Row(
                        entry.getValue().named(),
                        prices.flatMap(list -> list.find(entry.getKey())),
                        Optional.ofNullable(there.get(entry.getKey())).map(Counted::count),
                        Optional.ofNullable(needed.get(entry.getKey()))
                                .map(Counted::count)
                                .orElse(BigDecimal.ZERO),
                        jobs.getOrDefault(entry.getKey(), List.of())))
                .toList();
    }

    /** Jobs with a plan whose loom is not prepared yet; also those that nobody has checked in. */
    private List<Card> waiting() {
        Stream<String> stages = Stream.concat(
                Stream.of(JobStep.PARTS),
                EnumSet.range(JobStep.CHECK_IN, JobStep.BENCH).stream().map(JobStep::word));
        return stages.flatMap(stage ->
                        book.cards().list(Listing.all(CardKind.JOB, MOST).at(stage)).stream())
                .filter(line -> line.headline().find("verdict").isPresent())
                .flatMap(line -> book.cards().find(line.id()).stream())
                .filter(job -> job.get(JobStep.BENCH.entry()).isBlank())
                .toList();
    }

    /** What a job's plan takes and the shelf has too little of for this job alone, of what is counted there. */
    public List<Article> lacking(Card job) {
        Map<Article, Counted> there = there();
        return needs(job).entrySet().stream()
                .filter(need -> there.containsKey(need.getKey())
                        && Objects.requireNonNull(there.get(need.getKey()))
                                        .count()
                                        .compareTo(need.getValue().count())
                                < 0)
                .map(need -> need.getValue().named())
                .toList();
    }

    /** Takes what a job's plan needs off the shelf, as far as it was counted there. */
    public void take(Card job, Author who) {
        change(needs(job), "prices.taken", BigDecimal::subtract, who);
    }

    /** Takes so many of an article off the shelf, as far as it was counted there. */
    public void take(Article article, BigDecimal count, Author who) {
        change(one(article, count), "prices.taken", BigDecimal::subtract, who);
    }

    /** Puts so many of an article back, where it is counted. */
    public void putBack(Article article, BigDecimal count, Author who) {
        change(one(article, count), "prices.put-back", BigDecimal::add, who);
    }

    private static Map<Article, Counted> one(Article article, BigDecimal count) {
        Counted counted = new Counted(article, count);
        return Map.of(counted.plain(), counted);
    }

    private void change(Map<Article, Counted> counts, String what, BinaryOperator<BigDecimal> how, Author who) {
        Prices.card(book)
                .ifPresent(prices -> book.cards().amend(prices, who, what, now -> {
                    Map<Article, Counted> after = new TreeMap<>(counts(now.get(Prices.STOCK)));
                    counts.forEach((article, moved) -> after.computeIfPresent(
                            article,
                            (same, was) -> new Counted(
                                    was.named(),
                                    how.apply(was.count(), moved.count()).max(BigDecimal.ZERO))));
                    return after.isEmpty() ? Map.of() : Map.of(Prices.STOCK, text(after));
                }));
    }
}
