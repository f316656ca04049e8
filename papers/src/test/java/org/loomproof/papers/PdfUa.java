package org.loomproof.papers;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.TreeSet;
import org.verapdf.core.VeraPDFException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/**
 * The machine-checkable rules of PDF/UA-1 (ISO 14289-1), by veraPDF's own rules.
 *
 * @param asked how many times a rule was asked
 * @param broken each rule that is broken, with what breaks it
 */
record PdfUa(int asked, List<String> broken) {

    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    static PdfUa of(byte[] pdf) {
        try (PDFAParser parser =
                        Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFUA_1);
                PDFAValidator validator =
                        Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, 10_000, false, false, false)) {
            ValidationResult result = validator.validate(parser);
            return new PdfUa(result.getTotalAssertions(), broken(result));
        } catch (VeraPDFException | IOException e) {
            throw new AssertionError("veraPDF cannot read it", e);
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
