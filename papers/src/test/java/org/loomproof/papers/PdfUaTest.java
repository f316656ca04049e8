package org.loomproof.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.loomproof.papers.page.Page;
import org.loomproof.papers.pdf.Pdf;
import org.loomproof.papers.pdf.Sheet;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** Every printed page against the machine-checkable rules of PDF/UA-1 (ISO 14289-1), by veraPDF's own rules. */
class PdfUaTest {

    @BeforeAll
    static void checker() {
        VeraGreenfieldFoundryProvider.initialise();
    }

    @Test
    void everyPageKeepsTheRulesForScreenReaders() throws Exception {
        for (Page page : List.of(
                PdfTest.proof(),
                PdfTest.schematic(),
                PdfTest.benchCard(),
                PdfTest.baySheet(),
                PdfTest.handOver(),
                PdfTest.pickList(),
                TestOrderTest.testOrder(),
                TestOrderTest.commissioning())) {
            try (PDFAParser parser = Foundries.defaultInstance()
                            .createParser(new ByteArrayInputStream(Pdf.of(page, Sheet.A4)), PDFAFlavour.PDFUA_1);
                    PDFAValidator validator = Foundries.defaultInstance()
                            .createValidator(PDFAFlavour.PDFUA_1, 10_000, false, false, false)) {
                ValidationResult result = validator.validate(parser);
                assertThat(broken(result)).as(page.title()).isEmpty();
                assertThat(result.getTotalAssertions()).isGreaterThan(100);
            }
        }
    }

    private static List<String> broken(ValidationResult result) {
        TreeSet<String> broken = new TreeSet<>();
        for (TestAssertion assertion : result.getTestAssertions()) {
            if (assertion.getStatus() == TestAssertion.Status.FAILED) {
                broken.add(assertion.getRuleId().getClause() + ": " + assertion.getMessage() + " "
                        + assertion.getLocation().getContext().replaceAll("\\[[0-9]+\\]", "[]"));
            }
        }
        return List.copyOf(broken);
    }
}
