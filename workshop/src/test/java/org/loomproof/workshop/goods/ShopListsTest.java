package org.loomproof.workshop.goods;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.goods.price.History;
import org.loomproof.workshop.goods.price.HistoryReader;
import org.loomproof.workshop.goods.price.Labour;
import org.loomproof.workshop.goods.price.Spread;
import org.loomproof.workshop.goods.price.Work;
import org.loomproof.workshop.goods.shelf.Article;
import org.loomproof.workshop.goods.shelf.Item;
import org.loomproof.workshop.goods.shelf.Stock;
import org.loomproof.workshop.goods.shelf.StockReader;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.problem.ProblemKind;

/** What a shop writes down of its shelf and of its time. */
class ShopListsTest {

    private static Checked<History> history(String lines) {
        return HistoryReader.read(new SourceText("history.csv", "work,minutes\n" + lines));
    }

    private static Checked<Stock> stock(String lines) {
        return StockReader.read(new SourceText("stock.csv", "article,size,count\n" + lines));
    }

    private static Spread spread(int... minutes) {
        return Spread.of(IntStream.of(minutes).mapToObj(BigDecimal::valueOf).toList());
    }

    private static BigDecimal decimal(String text) {
        return new BigDecimal(text);
    }

    /** The quartiles that the statistics language R gives for 1 to 10: 3.25, 5.5, 7.75. From memory. */
    @Test
    void quartilesAreThoseOfAWidelyUsedLibrary() {
        assertThat(spread(10, 1, 9, 2, 8, 3, 7, 4, 6, 5))
                .isEqualTo(new Spread(10, decimal("3.25"), decimal("5.50"), decimal("7.75")));
        assertThat(spread(4)).isEqualTo(new Spread(1, decimal("4.00"), decimal("4.00"), decimal("4.00")));
    }

    @Test
    void theMedianOfEnoughTimingsTakesThePlaceOfTheUsualMinutes() {
        History history = ((Checked.Good<History>)
                        history("tap,5\ntap,6\ntap,7\ntap,9\ntap,20\n# a bad day\ncut,50\ncut,60\n"))
                .value();
        List<Labour.Line> lines = Labour.of(
                        Jobs.simple().brief(), Jobs.simple().plan(), Map.of(Work.PANEL, BigDecimal.TWO), history)
                .lines();
        assertThat(lines)
                .filteredOn(line -> line.work() == Work.TAP)
                .singleElement()
                .satisfies(line -> {
                    assertThat(line.minutesEach()).isEqualByComparingTo("7");
                    assertThat(line.minutes()).isEqualByComparingTo("21");
                    assertThat(line.spread())
                            .contains(new Spread(5, decimal("6.00"), decimal("7.00"), decimal("9.00")));
                });
        // Two timings are too few to go by: the usual twenty minutes stand.
        assertThat(lines)
                .filteredOn(line -> line.work() == Work.CUT)
                .singleElement()
                .satisfies(line -> {
                    assertThat(line.minutesEach()).isEqualByComparingTo("20");
                    assertThat(line.spread()).isEmpty();
                });
        assertThat(lines)
                .filteredOn(line -> line.work() == Work.PANEL)
                .extracting(Labour.Line::minutesEach)
                .containsExactly(BigDecimal.TWO);
    }

    @Test
    void whatIsMissingIsTheNeedLessTheShelf() {
        Stock stock = ((Checked.Good<Stock>) stock("fuse,7.5 A,2\nwire,1 mm2,3.5\n")).value();
        assertThat(stock.missing(item(Article.Kind.FUSE, "7.5 A", "3"))).contains(decimal("1"));
        assertThat(stock.missing(item(Article.Kind.FUSE, "7.5 A", "2")).orElseThrow())
                .isEqualByComparingTo("0");
        assertThat(stock.missing(item(Article.Kind.WIRE, "1 mm²", "4.6"))).contains(decimal("1.1"));
        assertThat(stock.missing(item(Article.Kind.FUSE, "10 A", "1"))).isEmpty();
    }

    private static Item item(Article.Kind kind, String size, String amount) {
        return new Item(new Article(kind, size), decimal(amount), Item.From.SHELF, List.of());
    }

    /** A spreadsheet's capitals name the same thing once more, and not another. */
    @Test
    void aWordInCapitalsIsTheSameWord() {
        assertThat(stock("Fuse,10 A,3\nFuse Holder,10 A,2\n")).isInstanceOf(Checked.Good.class);
        assertThat(((Checked.Bad<Stock>) stock("fuse,10 A,3\nFuse,10A,1\n")).problems())
                .hasSize(1);
    }

    @Test
    void allThatIsWrongIsToldAtOnce() {
        assertThat(((Checked.Bad<Stock>) stock("fuze,,2\nfuse,,two\nfuse,7.5 A,1\nfuse,7.5a,2\nrelay,3\n")).problems())
                .extracting(Problem::kind, problem -> problem.at().line())
                .containsExactly(
                        tuple(ProblemKind.NOT_ONE_OF, 2),
                        tuple(ProblemKind.NOT_A_NUMBER, 3),
                        tuple(ProblemKind.DUPLICATE_KEY, 5),
                        tuple(ProblemKind.WRONG_SHAPE, 6));
        assertThat(((Checked.Bad<History>) history("tapp,5\ntap,-1\n")).problems())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.NOT_ONE_OF, ProblemKind.NOT_A_NUMBER);
    }
}
