package org.loomproof.papers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.papers.folder.Paper;
import org.loomproof.papers.page.Page;
import org.loomproof.papers.pdf.Pdf;
import org.loomproof.papers.pdf.Sheet;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.goods.price.History;
import org.loomproof.workshop.words.Messages;

/** Printed pages, in full every one, against the rules for screen readers; those of the worked examples are in {@link ExamplePapersTest}. */
class PdfUaTest {

    @Test
    void everyPageKeepsTheRulesForScreenReaders() {
        for (Page page : Sample.of(PdfTest.pages(), 5)) {
            PdfUa found = PdfUa.of(Pdf.of(page, Sheet.A4));
            assertThat(found.broken()).as(page.title()).isEmpty();
            assertThat(found.asked()).isGreaterThan(100);
        }
    }

    private static List<Arguments> others() {
        Locale spanish = Locale.of("es");
        return Sample.of(
                List.of(
                        arguments(Locale.ENGLISH, Sheet.LETTER),
                        arguments(spanish, Sheet.A4),
                        arguments(spanish, Sheet.LETTER)),
                1);
    }

    @ParameterizedTest
    @MethodSource("others")
    void soDoThoseInAnotherLanguageAndOnAnotherSheet(Locale locale, Sheet sheet) {
        ShopFacts shop =
                new ShopFacts(Optional.empty(), History.NONE, Optional.empty(), Optional.empty(), List.of(), locale);
        List<Paper> printed = Papers.of(SampleJob.material(), shop, Optional.of(sheet), Messages.in(locale)).stream()
                .filter(paper -> paper.name().endsWith(".pdf"))
                .toList();
        assertThat(printed).hasSizeGreaterThan(7);
        for (Paper paper : Sample.of(printed, 4)) {
            assertThat(PdfUa.of(paper.bytes()).broken()).as(paper.name()).isEmpty();
        }
    }
}
