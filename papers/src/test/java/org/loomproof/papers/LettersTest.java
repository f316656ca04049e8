package org.loomproof.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;
import org.loomproof.papers.letter.HandOverLetter;
import org.loomproof.papers.letter.QuoteLetter;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.order.DeclaredChange;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.goods.price.PriceList;
import org.loomproof.workshop.goods.price.Quote;
import org.loomproof.workshop.goods.shelf.Article;

/** What the customer reads. */
class LettersTest {

    private static final String HIDDEN = "behind the ash tray";

    /** Something that the car does otherwise afterwards. */
    static final DeclaredChange DIMMED = new DeclaredChange(
            new ElementId("reading-lamp"),
            new DeclaredChange.Becomes.Draws(false, 20),
            Map.of(),
            Optional.empty(),
            "The reading lamp is dimmer.",
            "the lamp hangs behind a diode");

    private static final Quote QUOTE = quote(Map.of(Article.Kind.FUSE, Map.of("", new BigDecimal("0.45"))));

    private static Quote quote(Map<Article.Kind, Map<String, BigDecimal>> prices) {
        return Quote.of(
                SampleJob.brief(),
                SampleJob.plan(),
                new PriceList(CurrencyUnit.EUR, new BigDecimal("78"), new BigDecimal("20"), 14, Map.of(), prices));
    }

    private static String quoteText(Quote quote) {
        return QuoteLetter.text(SampleJob.brief(), SampleJob.plan(), quote, SampleJob.words());
    }

    private static String handOver() {
        return HandOverLetter.text(SampleJob.brief(), SampleJob.plan(), SampleJob.words());
    }

    @Test
    void theHiddenPlaceStandsOnTheSlipAlone() {
        assertThat(SampleJob.brief().order().overridePlace()).contains(HIDDEN);
        assertThat(HandOverLetter.slip(SampleJob.brief(), SampleJob.words()).html())
                .contains(HIDDEN);
        assertThat(handOver()).doesNotContain(HIDDEN);
        assertThat(quoteText(QUOTE)).doesNotContain(HIDDEN);
    }

    @Test
    void aRefusedWishIsTurnedDownWithReasonAndWayOut() {
        assertThat(unfolded(handOver()))
                .contains("Not done: remote start.", "The gearbox is manual", "A neutral switch that has been proven");
        assertThat(unfolded(quoteText(QUOTE))).contains("What we do not do, and why", "The gearbox is manual");
    }

    /** The sample's cautions are plain text, as those of a plan that was read from its file are. */
    @Test
    void whatTheCarDoesOtherwiseIsToldWithRoomToSignAndNothingIsToldWhereNothingIsDeclared() {
        Brief sample = SampleJob.brief();
        Brief declared = new Brief(sample.sheet(), sample.kit(), sample.order().declaring(List.of(DIMMED)));
        List<String> letters = List.of(
                HandOverLetter.text(declared, SampleJob.plan(), SampleJob.words()),
                QuoteLetter.text(declared, SampleJob.plan(), QUOTE, SampleJob.words()));
        assertThat(letters)
                .allSatisfy(letter -> assertThat(letter)
                        .contains("- The reading lamp is dimmer.\nI know this and want it so (customer): ____")
                        .doesNotContain("behind a diode"));
        assertThat(letters).allSatisfy(letter -> assertThat(letter.lines()).allMatch(line -> line.length() <= 64));
        Reading page = Reading.of(HandOverLetter.page(declared, SampleJob.plan(), SampleJob.words())
                .html());
        assertThat(page.elements("div", "signature").getFirst().getTextContent())
                .contains("customer", "Date");
        assertThat(handOver() + quoteText(QUOTE)).doesNotContain("I know this");
    }

    @Test
    void howLongTheCarMayStandIsToldWhateverThePlanCameFrom() {
        assertThat(unfolded(handOver())).contains("When it stands unused", "the engine cranks for");
    }

    @Test
    void aQuoteWithoutAllPricesSaysThatItIsNone() {
        assertThat(unfolded(quoteText(QUOTE))).contains("Not a quote yet", "The price list says nothing of");
    }

    @Test
    void theSumsOfTheTextAreThoseOfTheQuote() {
        String text = unfolded(quoteText(QUOTE));
        assertThat(text).containsPattern("To pay +EUR " + QUOTE.gross().getAmount());
        assertThat(text).containsPattern("Tax, 20 % +EUR " + QUOTE.tax().getAmount());
        assertThat(text).contains("stands for 14 days");
    }

    @Test
    void noLineIsWiderThanAPhone() {
        assertThat(quoteText(QUOTE).lines()).allMatch(line -> line.length() <= 64);
        assertThat(handOver().lines()).allMatch(line -> line.length() <= 64);
    }

    private static String unfolded(String text) {
        return text.replace('\u00A0', ' ').replaceAll("\n  ", " ");
    }
}
