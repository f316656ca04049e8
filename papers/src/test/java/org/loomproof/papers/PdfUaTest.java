package org.loomproof.papers;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomproof.papers.page.Page;
import org.loomproof.papers.pdf.Pdf;
import org.loomproof.papers.pdf.Sheet;

/** Every printed page against the rules for screen readers; those of the worked examples are in {@link ExamplePapersTest}. */
class PdfUaTest {

    @Test
    void everyPageKeepsTheRulesForScreenReaders() {
        for (Page page : PdfTest.pages()) {
            PdfUa found = PdfUa.of(Pdf.of(page, Sheet.A4));
            assertThat(found.broken()).as(page.title()).isEmpty();
            assertThat(found.asked()).isGreaterThan(100);
        }
    }
}
