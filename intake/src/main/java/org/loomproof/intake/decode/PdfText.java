package org.loomproof.intake.decode;

import java.io.IOException;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
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
