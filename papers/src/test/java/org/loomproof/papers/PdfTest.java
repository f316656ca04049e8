package org.loomproof.papers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
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
import org.apache.pdfbox.rendering.PDFRenderer;
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
import org.loomproof.papers.record.PhotoReaderTest;
import org.loomproof.papers.record.WarrantyRecord;
import org.loomproof.papers.report.ProofReport;
import org.loomproof.papers.schematic.Details;
import org.loomproof.papers.schematic.Schematic;
import org.loomproof.papers.schematic.SchematicPage;
import org.loomproof.papers.shelf.PickListPage;
import org.loomproof.papers.svg.SvgDrawing;
import org.loomproof.workshop.goods.shelf.PickList;

/** What comes out of the printer. */
class PdfTest {

    /** Every kind of page there is, but for the customer's quote and slip. */
    static List<Page> pages() {
        return List.of(
                proof(),
                schematic(),
                benchCard(),
                baySheet(),
                handOver(),
                pickList(),
                record(),
                TestOrderTest.testOrder(),
                TestOrderTest.commissioning());
    }

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

    private static Page record() {
        return WarrantyRecord.with(
                WarrantyRecord.page(SampleJob.brief(), SampleJob.plan(), List.of(), SampleJob.words()),
                List.of(PhotoReaderTest.photo()));
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
    void noTextIsUnderSevenPointsOrBeyondThePageOrOnOther(Sheet sheet) {
        for (Page page : pages()) {
            PrintInspection found = PrintInspection.of(Pdf.of(page, sheet));
            assertThat(found.letters()).isGreaterThan(200);
            assertThat(found.tooSmall()).as(page.title()).isEmpty();
            assertThat(found.outside()).as(page.title()).isEmpty();
            assertThat(found.overlaps()).as(page.title()).isEmpty();
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

    /** Millimetres of a drawing's width on a sheet; what {@link SchematicTest} counts with is the least. */
    private static double width(Sheet sheet) {
        return switch (sheet) {
            case A4 -> 280;
            case LETTER -> 268;
        };
    }

    /** A drawing's letters are printed as shapes; how large they are follows from how wide its frame is on the page. */
    @ParameterizedTest
    @EnumSource(Sheet.class)
    void aDrawingIsPrintedAsLargeAsItsLetteringIsCountedFor(Sheet sheet) throws IOException {
        try (PDDocument document = Loader.loadPDF(Pdf.of(schematic(), sheet))) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(1, 144);
            int first = page.getWidth();
            int last = 0;
            for (int x = 0; x < page.getWidth(); x++) {
                for (int y = 0; y < page.getHeight(); y++) {
                    if ((page.getRGB(x, y) & 0xff) < 240) {
                        first = Math.min(first, x);
                        last = Math.max(last, x);
                    }
                }
            }
            assertThat((last - first) / 144.0 * 25.4).isBetween(width(sheet) - 5, width(sheet));
        }
    }

    /** The picture of joint J1 is in the file, told at its joint, and says in words what it is. */
    @Test
    void aPictureIsInThePrintAndAtItsJoint() throws IOException {
        String page = record().html();
        assertThat(page).contains("alt=\"1: J1-ground.jpg\"");
        assertThat(Reading.of(page).elements("tr"))
                .filteredOn(row -> row.getTextContent().strip().startsWith("J1")
                        && !row.getTextContent().strip().matches("(?s)J1\\d.*"))
                .hasSize(1)
                .allSatisfy(row -> assertThat(row.getTextContent().strip()).endsWith("1"));
        assertThat(DrawnPictures.in(Pdf.of(record(), Sheet.A4))).singleElement().satisfies(drawn -> {
            assertThat(drawn.wide()).isCloseTo(85 / 25.4 * 72, within(1.0));
            assertThat(drawn.high() / drawn.wide())
                    .as("not stretched")
                    .isCloseTo((double) drawn.pixelsHigh() / drawn.pixelsWide(), within(0.01));
        });
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

    /** The job book keeps pages as files, and prints them when somebody asks. */
    @Test
    void aPageThatWasKeptPrintsAsItWouldHave() {
        for (Page page : pages()) {
            Page kept = Page.read(page.html());
            assertThat(kept.html()).as(page.title()).isEqualTo(page.html());
            assertThat(Pdf.of(kept, Sheet.A4)).as(page.title()).isEqualTo(Pdf.of(page, Sheet.A4));
        }
    }
}
