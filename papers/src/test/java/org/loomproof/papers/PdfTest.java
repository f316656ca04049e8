package org.loomproof.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.loomproof.papers.bay.BaySheet;
import org.loomproof.papers.bay.ShopAddress;
import org.loomproof.papers.card.BenchCard;
import org.loomproof.papers.drawing.PlacedDrawing;
import org.loomproof.papers.letter.HandOverLetter;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.page.Page;
import org.loomproof.papers.pdf.Pdf;
import org.loomproof.papers.pdf.Sheet;
import org.loomproof.papers.report.ProofReport;
import org.loomproof.papers.schematic.Details;
import org.loomproof.papers.schematic.Schematic;
import org.loomproof.papers.schematic.SchematicPage;
import org.loomproof.papers.shelf.PickListPage;
import org.loomproof.papers.svg.SvgDrawing;
import org.loomproof.workshop.goods.shelf.PickList;

/** What comes out of the printer. */
class PdfTest {

    private static final double SMALLEST_POINTS = 6.99;

    static Page proof() {
        return ProofReport.page(
                SampleJob.brief(),
                SampleJob.plan(),
                SampleProof.proof(),
                drawn(Schematic.sheets(SampleJob.brief(), SampleJob.plan(), SampleJob.words())),
                SampleJob.words());
    }

    static Page schematic() {
        return SchematicPage.of(
                SampleJob.brief(),
                drawn(Schematic.sheets(SampleJob.brief(), SampleJob.plan(), SampleJob.words())),
                drawn(Details.sheets(SampleJob.brief(), SampleJob.plan(), SampleJob.words())),
                SampleJob.words());
    }

    private static List<Element> drawn(List<PlacedDrawing> sheets) {
        return sheets.stream().map(sheet -> SvgDrawing.of(sheet, "Schematic")).toList();
    }

    static Page pickList() {
        return PickListPage.page(
                SampleJob.brief(),
                SampleJob.plan(),
                PickList.of(SampleJob.brief(), SampleJob.plan()),
                Optional.empty(),
                SampleJob.words());
    }

    static Page handOver() {
        return HandOverLetter.page(SampleJob.brief(), SampleJob.plan(), SampleJob.words());
    }

    static Page baySheet() {
        return BaySheet.page(
                SampleJob.brief(), SampleJob.plan(), ShopAddress.in("https://bench.example:8443"), SampleJob.words());
    }

    static Page benchCard() {
        return BenchCard.page(SampleJob.brief(), SampleJob.plan(), SampleJob.words());
    }

    @Test
    void theSamePageGivesTheSameBytes() {
        assertThat(Pdf.of(handOver(), Sheet.A4)).isEqualTo(Pdf.of(handOver(), Sheet.A4));
    }

    @ParameterizedTest
    @EnumSource(Sheet.class)
    void noTextIsUnderSevenPointsOrBeyondThePage(Sheet sheet) throws IOException {
        for (Page page : List.of(
                proof(),
                schematic(),
                benchCard(),
                baySheet(),
                handOver(),
                pickList(),
                TestOrderTest.testOrder(),
                TestOrderTest.commissioning())) {
            try (PDDocument document = Loader.loadPDF(Pdf.of(page, sheet))) {
                Positions text = new Positions();
                text.getText(document);
                assertThat(text.tooSmall).as(page.title()).isEmpty();
                assertThat(text.outside).as(page.title()).isEmpty();
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Sheet.class)
    void theSheetIsTheOneInThePrinterAndDrawingsLieAcross(Sheet sheet) throws IOException {
        try (PDDocument document = Loader.loadPDF(Pdf.of(proof(), sheet))) {
            PDRectangle first = document.getPage(0).getMediaBox();
            double wideMillimetres = first.getWidth() / 72 * 25.4;
            assertThat(wideMillimetres).isBetween(sheet == Sheet.A4 ? 209.5 : 215.5, sheet == Sheet.A4 ? 210.5 : 216.5);
            List<Boolean> across = new ArrayList<>();
            document.getPages()
                    .forEach(p -> across.add(
                            p.getMediaBox().getWidth() > p.getMediaBox().getHeight()));
            assertThat(across).filteredOn(a -> a).isNotEmpty();
        }
    }

    /** What ISO 14289-1 (PDF/UA) asks of a reader's first look: marked, in a language, with a title, tagged. From memory. */
    @Test
    void aScreenReaderFindsItsWay() throws IOException {
        try (PDDocument document = Loader.loadPDF(Pdf.of(benchCard(), Sheet.A4))) {
            assertThat(document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
            assertThat(document.getDocumentInformation().getTitle()).startsWith("Bench card");
            assertThat(document.getDocumentCatalog().getStructureTreeRoot()).isNotNull();
            List<String> bookmarks = new ArrayList<>();
            document.getDocumentCatalog().getDocumentOutline().children().forEach(b -> bookmarks.add(b.getTitle()));
            assertThat(bookmarks).anyMatch(b -> b.startsWith("Plug P1")).anyMatch(b -> b.startsWith("Parts to add"));
        }
    }

    @Test
    void itsFontsAreInside() throws IOException {
        try (PDDocument document = Loader.loadPDF(Pdf.of(benchCard(), Sheet.LETTER))) {
            Map<String, Boolean> embedded = new HashMap<>();
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    embedded.put(font.getName(), font.isEmbedded());
                }
            }
            assertThat(embedded)
                    .isNotEmpty()
                    .allSatisfy((name, inside) -> assertThat(inside).as(name).isTrue());
        }
    }

    /** Where each letter stands, and how large. */
    private static final class Positions extends PDFTextStripper {
        private final List<String> tooSmall = new ArrayList<>();
        private final List<String> outside = new ArrayList<>();

        @Override
        protected void processTextPosition(TextPosition text) {
            if (text.getUnicode().isBlank()) {
                return;
            }
            if (text.getFontSizeInPt() < SMALLEST_POINTS) {
                tooSmall.add(text.getUnicode() + " at " + text.getFontSizeInPt());
            }
            if (text.getX() < 0
                    || text.getX() + text.getWidth() > text.getPageWidth()
                    || text.getY() < 0
                    || text.getY() > text.getPageHeight()) {
                outside.add(text.getUnicode() + " at " + text.getX() + ", " + text.getY());
            }
        }
    }
}
