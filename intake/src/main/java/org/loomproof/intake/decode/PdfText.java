package org.loomproof.intake.decode;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Optional;
import java.util.function.Predicate;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** The text of a PDF, line by line; what stands apart on a line is kept apart by a tab, so that columns stay columns. */
final class PdfText {

    private static final int MOST_PAGES = 200;

    /** A gap wider than this many spaces parts two columns. */
    private static final float COLUMN_GAP_SPACES = 3;

    private PdfText() {}

    static boolean isPdf(byte[] bytes) {
        return bytes.length > 4 && bytes[0] == '%' && bytes[1] == 'P' && bytes[2] == 'D' && bytes[3] == 'F';
    }

    /** The text, empty when the pages hold none; nothing when the file is broken or locked. */
    static Optional<String> read(byte[] bytes) {
        try (PDDocument document = Loader.loadPDF(bytes)) {
            Columns columns = new Columns();
            columns.setEndPage(MOST_PAGES);
            return Optional.of(columns.getText(document));
        } catch (IOException | RuntimeException e) {
            // The library answers broken files with many kinds of exception; the file is broken in each case.
            return Optional.empty();
        }
    }

    /** How pages without text are drawn for the reading of pictures: dots to the inch, which is what that program wants. */
    private static final float DOTS_PER_INCH = 300;

    /** A scan of more pages is no sheet of one vehicle. */
    private static final int MOST_SCANNED_PAGES = 10;

    /** A page may be drawn no larger than this, whatever its file says: a forged size would fill the memory. */
    private static final double MOST_DOTS = 40e6;

    private static final double POINTS_PER_INCH = 72;

    /** Each page handed on as a picture, one at a time; false when the file is broken or a page too large, or a reader says so. */
    static boolean eachPage(byte[] bytes, Predicate<byte[]> reader) {
        try (PDDocument document = Loader.loadPDF(bytes)) {
            PDFRenderer renderer = new PDFRenderer(document);
            for (int i = 0; i < Math.min(document.getNumberOfPages(), MOST_SCANNED_PAGES); i++) {
                PDRectangle box = document.getPage(i).getCropBox();
                double inches = DOTS_PER_INCH / POINTS_PER_INCH;
                if (box.getWidth() * inches * box.getHeight() * inches > MOST_DOTS) {
                    return false;
                }
                ByteArrayOutputStream picture = new ByteArrayOutputStream();
                ImageIO.write(renderer.renderImageWithDPI(i, DOTS_PER_INCH, ImageType.GRAY), "png", picture);
                if (!reader.test(picture.toByteArray())) {
                    return false;
                }
            }
            return true;
        } catch (IOException | RuntimeException e) {
            return false;
        }
    }

    private static final class Columns extends PDFTextStripper {

        private float lastEnd = Float.NaN;

        private Columns() {
            setSortByPosition(true);
        }

        @Override
        protected void writeString(String text, java.util.List<TextPosition> positions) throws IOException {
            TextPosition first = positions.getFirst();
            if (first.getX() - lastEnd > COLUMN_GAP_SPACES * first.getWidthOfSpace()) {
                writeString("\t");
            }
            TextPosition last = positions.getLast();
            lastEnd = last.getX() + last.getWidth();
            writeString(text);
        }

        @Override
        protected void writeLineSeparator() throws IOException {
            lastEnd = Float.NaN;
            super.writeLineSeparator();
        }
    }
}
