package org.loomproof.workshop.goods;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.goods.price.PriceList;
import org.loomproof.workshop.goods.price.PriceListReader;
import org.loomproof.workshop.goods.price.Quote;
import org.loomproof.workshop.goods.shelf.Article;
import org.loomproof.workshop.goods.shelf.Item;
import org.loomproof.workshop.goods.shelf.PickList;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.problem.ProblemKind;

/**
 * Quotes for the simple plan, summed by hand in currencies of none, two and three decimals. The plan's minutes: check-in 20,
 * five leads at the bench 10, three taps 24, one cut 20, four added parts 16, the siren 20, four panels 40, final test 30,
 * hand-over 15: 195 in all.
 */
class QuoteTest {

    private static final Jobs.Job JOB = Jobs.simple();

    private static final String ARTICLES = """
            kit,simple kit,%s
            relay,40A/30A,%s
            fuse,,%s
            wire,1 mm2,%s
            """;

    private static Checked<PriceList> read(String lines) {
        return PriceListReader.read(new SourceText("prices.csv", "article,size,price\n" + lines));
    }

    private static Quote quote(String lines) {
        return Quote.of(JOB.brief(), JOB.plan(), ((Checked.Good<PriceList>) read(lines)).value());
    }

    /**
     * Work at 78.00 an hour: 26.00 + 13.00 + 31.20 + 26.00 + 20.80 + 26.00 + 52.00 + 39.00 + 19.50 = 253.50. Goods: kit
     * 189.90, relay 6.45, two fuses at 0.35 = 0.70, 4.6 m of wire at 0.655 = 3.013, rounded 3.01; together 200.06. Net 453.56,
     * tax of 19 % 86.1764, rounded 86.18; to pay 539.74.
     */
    @Test
    void twoDecimals() {
        Quote quote =
                quote("currency,,EUR\nhour,,78.00\ntax,,19\n" + ARTICLES.formatted("189.90", "6.45", "0.35", "0.655"));
        assertThat(quote.workSum()).isEqualTo(Money.parse("EUR 253.50"));
        assertThat(quote.goodsSum()).isEqualTo(Money.parse("EUR 200.06"));
        assertThat(quote.tax()).isEqualTo(Money.parse("EUR 86.18"));
        assertThat(quote.gross()).isEqualTo(Money.parse("EUR 539.74"));
    }

    /**
     * Work at 9,000 an hour: 3000 + 1500 + 3600 + 3000 + 2400 + 3000 + 6000 + 4500 + 2250 = 29,250. Goods: 24,800 + 780 + two
     * at 45 = 90 + 4.6 m at 82 = 377.2, rounded 377; together 26,047. Net 55,297; tax of 10 % 5,529.7, rounded 5,530.
     */
    @Test
    void noDecimals() {
        Quote quote = quote("currency,,JPY\nhour,,9000\ntax,,10\n" + ARTICLES.formatted("24800", "780", "45", "82"));
        assertThat(quote.workSum()).isEqualTo(Money.parse("JPY 29250"));
        assertThat(quote.goodsSum()).isEqualTo(Money.parse("JPY 26047"));
        assertThat(quote.gross()).isEqualTo(Money.parse("JPY 60827"));
    }

    /**
     * Work at 7.100 an hour: 2.367 (20 min is 2.36667) + 1.183 + 2.840 + 2.367 + 1.893 + 2.367 + 4.733 + 3.550 + 1.775 =
     * 23.075. Goods: 78.250 + 2.465 + 0.250 + 4.6 m at 0.2055 = 0.9453, rounded 0.945; together 81.910. Without tax 104.985.
     */
    @Test
    void threeDecimals() {
        Quote quote = quote("currency,,BHD\nhour,,7.1\n" + ARTICLES.formatted("78.25", "2.465", "0.125", "0.2055"));
        assertThat(quote.workSum()).isEqualTo(Money.parse("BHD 23.075"));
        assertThat(quote.goodsSum()).isEqualTo(Money.parse("BHD 81.910"));
        assertThat(quote.gross()).isEqualTo(Money.parse("BHD 104.985"));
    }

    /**
     * Halves, which other ways of rounding would lose, on lines that come to less when they are rounded together. Work at 0.75 an
     * hour: 0.25 + 0.13 (0.125) + 0.30 + 0.25 + 0.20 + 0.25 + 0.50 + 0.38 (0.375) + 0.19 (0.1875) = 2.45, where 195 minutes at
     * once come to 2.4375. Goods: 0.87 + 0.13 (0.125) + two kinds of fuse at 0.13 (0.125) + 4.6 m at 0.375 = 1.725, rounded
     * 1.73; together 2.99, where the exact sum is 2.97. Net 5.44; tax of 7.8125 % is 0.425, rounded 0.43 (0.23
     * and 0.19 of goods and work by themselves); to pay 5.87.
     */
    @Test
    void halvesAreRoundedUpLineByLineAndTaxOnceOnTheirSum() {
        Quote quote = quote(
                "currency,,EUR\nhour,,0.75\ntax,,7.8125\n" + ARTICLES.formatted("0.87", "0.125", "0.125", "0.375"));
        assertThat(quote.workSum()).isEqualTo(Money.parse("EUR 2.45"));
        assertThat(quote.goodsSum()).isEqualTo(Money.parse("EUR 2.99"));
        assertThat(quote.net()).isEqualTo(Money.parse("EUR 5.44"));
        assertThat(quote.tax()).isEqualTo(Money.parse("EUR 0.43"));
        assertThat(quote.gross()).isEqualTo(Money.parse("EUR 5.87"));
    }

    @Test
    void whatComesInTheKitsBoxIsPaidWithTheKit() {
        String list = "currency,,EUR\nhour,,78\n" + ARTICLES.formatted("1", "1", "1", "1");
        assertThat(PickList.of(JOB.brief(), JOB.plan()).items())
                .anyMatch(item -> item.from() == Item.From.BOX && item.article().kind() == Article.Kind.EXTRA);
        assertThat(quote(list + "extra,,9\n").goodsSum()).isEqualTo(quote(list).goodsSum());
    }

    @Test
    void whatHasNoPriceIsTold() {
        Quote quote = quote("currency,,EUR\nhour,,78\n" + ARTICLES.formatted("1", "1", "1", "1"));
        assertThat(quote.unpriced())
                .extracting(i -> i.article().kind().word() + " " + i.article().size())
                .contains("diode 1N4004", "wire 6 mm²", "relay-socket ")
                .doesNotContain("fuse 5 A");
    }

    @Test
    void aShopsOwnMinutesComeFirst() {
        String list = "currency,,EUR\nhour,,60\n" + ARTICLES.formatted("1", "1", "1", "1");
        Money usual = quote(list).workSum();
        assertThat(quote(list + "minutes,tap,10\n").workSum()).isEqualTo(usual.plus(Money.parse("EUR 6.00")));
    }

    @Test
    void everyProblemOfAPriceListIsToldAtOnce() {
        List<Problem> problems = ((Checked.Bad<PriceList>) read("""
                        currency,,EURO
                        tax,,120
                        fuse,,"0,35"
                        fuse,5A,1
                        fuse,5 A,2
                        rellay,,3
                        minutes,tapp,6
                        diode,,1,50
                        """)).problems();
        assertThat(problems)
                .extracting(Problem::kind)
                .containsExactlyInAnyOrder(
                        ProblemKind.WRONG_SHAPE,
                        ProblemKind.OUT_OF_RANGE,
                        ProblemKind.NOT_A_NUMBER,
                        ProblemKind.DUPLICATE_KEY,
                        ProblemKind.NOT_ONE_OF,
                        ProblemKind.NOT_ONE_OF,
                        ProblemKind.WRONG_SHAPE,
                        ProblemKind.MISSING);
        assertThat(problems).extracting(p -> p.at().line()).containsExactly(0, 2, 3, 4, 6, 7, 8, 9);
    }

    @Test
    void aListWithoutItsFirstLineIsTold() {
        assertThat(PriceListReader.read(new SourceText("p.csv", "fuse,,1\ncurrency,,EUR\nhour,,1\n")))
                .isInstanceOf(Checked.Bad.class);
        assertThat(PriceListReader.read(new SourceText("p.csv", ""))).isInstanceOf(Checked.Bad.class);
    }
}
