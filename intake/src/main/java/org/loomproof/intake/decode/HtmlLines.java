package org.loomproof.intake.decode;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;
import org.jsoup.parser.Parser;
import org.jsoup.select.NodeVisitor;

/**
 * Text copied from a page as its source: each row of a table a line with tabs between cells, each block a line. Lines and
 * columns of the outcome are those of the page's source.
 */
final class HtmlLines {

    private static final Pattern PAGE =
            Pattern.compile("(?is)<(?:!doctype html|html|body|table|tr|p|div|ul|br|h[1-6])\\b[^>]*>");
    private static final int LOOKED_AT = 20_000;
    private static final int DEEPEST = 200;

    private HtmlLines() {}

    static boolean isPage(String text) {
        return PAGE.matcher(text.substring(0, Math.min(text.length(), LOOKED_AT)))
                .find();
    }

    static List<Passage> of(String html) {
        Parser parser = Parser.htmlParser().setTrackPosition(true).setMaxDepth(DEEPEST);
        Document page = parser.parseInput(html, "");
        page.select("script, style, head").remove();
        Walk walk = new Walk();
        page.body().traverse(walk);
        walk.endLine();
        return walk.lines;
    }

    private static final class Walk implements NodeVisitor {
        private final List<Passage> lines = new ArrayList<>();
        private final List<Passage> parts = new ArrayList<>();

        @Override
        public void head(Node node, int depth) {
            if (node instanceof TextNode text) {
                var range = text.sourceRange();
                int line = range.isTracked() ? Math.max(1, range.start().lineNumber()) : 1;
                int column = range.isTracked() ? Math.max(1, range.start().columnNumber()) : 1;
                add(text.getWholeText(), line, column);
            } else if (node instanceof Element element && startsLine(element)) {
                endLine();
            }
        }

        private void add(String text, int line, int column) {
            int at = line;
            int first = column;
            for (String piece : text.split("\r?\n", -1)) {
                String clean = piece.replace('\t', ' ');
                if (!clean.isBlank()) {
                    parts.add(Passage.line(clean, at, first));
                }
                at++;
                first = 1;
            }
        }

        @Override
        public void tail(Node node, int depth) {
            if (node instanceof Element element) {
                if (element.normalName().equals("td") || element.normalName().equals("th")) {
                    Passage cell = parts.isEmpty() ? Passage.line("", 1, 1) : Passage.join(parts);
                    cells.add(cell);
                    parts.clear();
                } else if (startsLine(element) && !isInCell(element)) {
                    endLine();
                }
            }
        }

        private final List<Passage> cells = new ArrayList<>();

        private static boolean startsLine(Element element) {
            return (element.isBlock() && !element.normalName().matches("t[dh]|tbody|thead|tfoot") && !isInCell(element))
                    || (element.normalName().equals("br") && !isInCell(element));
        }

        private static boolean isInCell(Element element) {
            return element.closest("td, th") != null;
        }

        private void endLine() {
            if (!cells.isEmpty()) {
                lines.add(tabbed(cells));
            } else {
                // A gap between blocks parts one thing from another, as an empty line does in plain text.
                lines.add(parts.isEmpty() ? Passage.line("", 1, 1) : Passage.join(parts));
            }
            cells.clear();
            parts.clear();
        }

        private static Passage tabbed(List<Passage> cells) {
            List<Passage> row = new ArrayList<>();
            for (Passage cell : cells) {
                if (!row.isEmpty()) {
                    row.add(TAB);
                }
                row.add(cell);
            }
            return Passage.append(row);
        }

        private static final Passage TAB = Passage.line("\t", 1, 1);
    }
}
