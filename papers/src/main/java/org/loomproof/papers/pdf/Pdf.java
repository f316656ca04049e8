package org.loomproof.papers.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.loomproof.papers.markup.Element;
import org.loomproof.papers.markup.MarkupWriter;
import org.loomproof.papers.page.Page;

/** Prints a page into a PDF. Nothing is fetched while it does so. */
public final class Pdf {

    private static final String FONT = "DejaVu Sans";

    /** What a document is told apart by; a clock would make two prints of one page differ. */
    private static final long NO_TIME = 0;

    static {
        System.setProperty("java.awt.headless", "true");
        XRLog.setLoggingEnabled(false);
    }

    private Pdf() {}

    /** The page on such sheets. */
    public static byte[] of(Page page, Sheet sheet) {
        PdfRendererBuilder builder = new PdfRendererBuilder()
                .usePdfUaAccessibility(true)
                .useSVGDrawer(new BatikSVGDrawer())
                .useFont(() -> font("DejaVuSans.ttf"), FONT, 400, FontStyle.NORMAL, true)
                .useFont(() -> font("DejaVuSans-Bold.ttf"), FONT, 700, FontStyle.NORMAL, true)
                .useUriResolver((base, uri) -> uri.startsWith("#") || uri.startsWith("data:") ? uri : null)
                .withHtmlContent(markup(page, sheet), null);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.createPDFWithoutClosing();
            PDDocument document = renderer.getPdfDocument();
            PDDocumentInformation information = new PDDocumentInformation();
            information.setTitle(page.title());
            document.setDocumentInformation(information);
            document.setDocumentId(NO_TIME);
            document.save(out);
            document.close();
        } catch (IOException e) {
            throw new UncheckedIOException("a page in memory cannot be printed", e);
        }
        return out.toByteArray();
    }

    private static String markup(Page page, Sheet sheet) {
        Printed printed = Printed.of(page.content());
        Element head = Element.of("head")
                .add(
                        Element.of("title", page.title()),
                        Element.of("meta").with("name", "description").with("content", page.title()),
                        printed.bookmarks(),
                        Element.of("style", styleSheet(sheet) + printed.roomRules()));
        return MarkupWriter.xml(Element.of("html")
                .with("xmlns", "http://www.w3.org/1999/xhtml")
                .with("lang", page.language().toLanguageTag())
                .add(
                        head,
                        Element.of("body")
                                .styled(page.bodyClass())
                                .add(Element.of("main").addAll(printed.content()))));
    }

    private static String styleSheet(Sheet sheet) {
        String sizes = "@page { size: " + sheet.upright() + "; }\n@page across { size: " + sheet.across() + "; }\n"
                + ".drawings svg { " + sheet.drawing() + "; }\n";
        try (InputStream in = resource("print.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8) + sizes;
        } catch (IOException e) {
            throw new UncheckedIOException("print.css cannot be read", e);
        }
    }

    private static InputStream font(String file) {
        return resource(file);
    }

    private static InputStream resource(String file) {
        return Objects.requireNonNull(Pdf.class.getResourceAsStream(file), () -> file + " is missing from the jar");
    }
}
