package org.loomproof.papers;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.loomproof.papers.drawing.Box;

/**
 * What is wrong with the letters of a PDF as they lie on its pages, drawings included.
 *
 * @param pages how many there are
 * @param letters how many are printed
 * @param tooSmall letters under 7 pt, as printed
 * @param outside letters that leave the page
 * @param overlaps pairs of letters that lie on each other
 * @param orphans headings and heads of tables that are the last thing on a page
 * @param text everything that can be read, hyphenation and line ends left as they are
 */
record PrintInspection(
        int pages,
        int letters,
        List<String> tooSmall,
        List<String> outside,
        List<String> overlaps,
        List<String> orphans,
        String text) {

    /** Points of the type of headings of sections, and of table heads. */
    private static final double HEADING = 11.5;

    private static final double TABLE_HEAD = 7.5;

    /** The number of the page stands lower than this above its end, in points: within the margin of 15 mm. */
    private static final double FOOT = 42;

    /** Seven points, less what rounding in the file may take. */
    private static final double SMALLEST_POINTS = 6.99;

    /** The share of a letter's box that counts: boxes are as wide as the letter's advance, which italics and kerning exceed. */
    private static final double SLACK = 0.15;

    /** The height of capital letters, by the share of the size of the type: common practice, no published source. */
    private static final double CAPITALS = 0.7;

    static PrintInspection of(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            Positions positions = new Positions();
            String text = positions.getText(document);
            return new PrintInspection(
                    document.getNumberOfPages(),
                    positions.letters,
                    positions.tooSmall,
                    positions.outside,
                    positions.overlaps,
                    positions.orphans,
                    text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private record Letter(String text, Box box) {}

    private static final class Positions extends PDFTextStripper {
        private final List<String> tooSmall = new ArrayList<>();
        private final List<String> outside = new ArrayList<>();
        private final List<String> overlaps = new ArrayList<>();
        private final List<String> orphans = new ArrayList<>();
        private Optional<TextPosition> lowest = Optional.empty();
        private final List<Letter> onPage = new ArrayList<>();
        private int letters;

        @Override
        protected void processTextPosition(TextPosition text) {
            super.processTextPosition(text);
            if (text.getUnicode().isBlank()) {
                return;
            }
            letters++;
            String place = text.getUnicode() + " of " + text.getYScale() + " pt at " + text.getX() + ", " + text.getY()
                    + " on page " + getCurrentPageNo();
            // The scale of the whole way from letter to page: the size of the font alone misses what a drawing is
            // scaled by.
            if (text.getYScale() < SMALLEST_POINTS) {
                tooSmall.add(place);
            }
            if (text.getX() < 0
                    || text.getX() + text.getWidth() > text.getPageWidth()
                    || text.getY() < 0
                    || text.getY() > text.getPageHeight()) {
                outside.add(place);
            }
            if (text.getY() < text.getPageHeight() - FOOT
                    && lowest.filter(last -> last.getY() > text.getY()).isEmpty()) {
                lowest = Optional.of(text);
            }
            double width = text.getWidth() * SLACK;
            double height = text.getYScale() * CAPITALS;
            onPage.add(new Letter(
                    place,
                    new Box(
                            text.getX() + width,
                            text.getY() - height * (1 - SLACK),
                            text.getX() + text.getWidth() - width,
                            text.getY() - height * SLACK)));
        }

        @Override
        protected void endPage(PDPage page) {
            onPage.sort(Comparator.comparingDouble(letter -> letter.box().top()));
            for (int i = 0; i < onPage.size(); i++) {
                double bottom = onPage.get(i).box().bottom();
                for (int j = i + 1; j < onPage.size() && onPage.get(j).box().top() < bottom; j++) {
                    if (onPage.get(i).box().overlaps(onPage.get(j).box())) {
                        overlaps.add(
                                onPage.get(i).text() + " | " + onPage.get(j).text());
                    }
                }
            }
            onPage.clear();
            lowest.filter(Positions::isHeading)
                    .ifPresent(last -> orphans.add(last.getUnicode() + " on page " + getCurrentPageNo()));
            lowest = Optional.empty();
        }

        private static boolean isHeading(TextPosition text) {
            double size = text.getYScale();
            boolean sized = Math.abs(size - HEADING) < 0.1 || Math.abs(size - TABLE_HEAD) < 0.1;
            return sized && text.getFont().getName().contains("Bold");
        }
    }
}
