package org.loomproof.papers.schematic;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.loomproof.papers.card.JointText;
import org.loomproof.papers.drawing.FontWidths;
import org.loomproof.papers.drawing.Ink;
import org.loomproof.papers.drawing.PlacedDrawing;
import org.loomproof.papers.drawing.Point;
import org.loomproof.papers.drawing.Sketch;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.goods.joint.Joints;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;

/**
 * Every coupling of a plan by itself, with how each of its joints is made, several on a sheet. Joints have the numbers that they
 * have on the schematic.
 */
public final class Details {

    private static final double GAP = 18;

    /** Text stands where the drawing's first block does. */
    private static final double INDENT = 6;

    private static final double TITLE = 14;
    private static final double LINE = 9.5;

    /** The least width for the lines under a narrow drawing. */
    private static final double LEAST_WIDTH = 250;

    private final Joints joints;
    private final Draughtsman draughtsman;
    private final SheetFrame frame;
    private final Wording words;

    private Details(Brief brief, Plan plan, Wording words) {
        this.joints = new Joints(brief, plan);
        this.draughtsman = new Draughtsman(brief, plan, joints, words);
        this.frame = new SheetFrame(brief, words);
        this.words = words;
    }

    /** One coupling: its drawing, under a title and over sentences of a line or more. */
    private record Cell(String title, PlacedDrawing drawing, List<List<String>> sentences) {

        double width() {
            return Math.max(LEAST_WIDTH, drawing.width());
        }

        double height() {
            return TITLE + drawing.height() + LINE * (tallest() + 0.5);
        }

        /** Itself; or drawing and sentences apart where they are too high together for a sheet. */
        List<Cell> onPaper() {
            if (SheetFrame.fits(width(), height())) {
                return List.of(this);
            }
            List<Cell> cells = new ArrayList<>();
            cells.add(new Cell(title, drawing, List.of()));
            PlacedDrawing none = new PlacedDrawing(
                    Math.min(drawing.width(), SheetFrame.roomAcross()), 0, List.of(), List.of(), List.of());
            cells.add(new Cell(FontWidths.fitted(title, none.width() - INDENT, Sketch.TYPE, true), none, sentences));
            return cells;
        }

        int tallest() {
            return columns().stream().mapToInt(List::size).max().orElse(0);
        }

        /** The lines in at most as many columns as the drawing is wide, as low as they can be with every sentence whole. */
        List<List<String>> columns() {
            int rows = 0;
            List<List<String>> filled;
            do {
                rows++;
                filled = filled(rows);
            } while (filled.size() > columns(width()));
            return filled;
        }

        /** Column by column, none with more rows than that unless one sentence has. */
        private List<List<String>> filled(int rows) {
            List<List<String>> filled = new ArrayList<>();
            for (List<String> sentence : sentences) {
                if (filled.isEmpty() || filled.getLast().size() + sentence.size() > rows) {
                    filled.add(new ArrayList<>());
                }
                filled.getLast().addAll(sentence);
            }
            return filled;
        }

        static int columns(double width) {
            return Math.max(1, (int) (width / LEAST_WIDTH));
        }
    }

    /** The sheets, in the kit's order. */
    public static List<PlacedDrawing> sheets(Brief brief, Plan plan, Wording words) {
        return new Details(brief, plan, words).sheets(plan);
    }

    private List<PlacedDrawing> sheets(Plan plan) {
        List<Plan> pieces = Splitting.of(plan).pieces(draughtsman::fits).stream()
                .filter(piece -> !piece.wires().isEmpty())
                .toList();
        // What goes on elsewhere says on which sheet, and that is known when everything has been laid out once.
        List<Integer> numbers = new ArrayList<>();
        packed(pieces, SheetIndex.NONE, numbers);
        List<PlacedDrawing> contents = packed(pieces, SheetIndex.ofOwners(pieces, numbers), new ArrayList<>());
        List<PlacedDrawing> sheets = new ArrayList<>();
        for (int i = 0; i < contents.size(); i++) {
            sheets.add(frame.aroundDetails(contents.get(i), i + 1, contents.size()));
        }
        return sheets;
    }

    private static List<Hookup.Connect> connects(Plan piece) {
        return piece.hookups().stream()
                .filter(Hookup.Connect.class::isInstance)
                .map(Hookup.Connect.class::cast)
                .toList();
    }

    private Cell cell(Plan piece, SheetIndex index) {
        PlacedDrawing drawing = draughtsman.place(piece, index);
        String leads = connects(piece).stream().map(c -> c.lead().value()).collect(Collectors.joining(", "));
        String couplings = connects(piece).stream()
                .map(connect -> words.coupling(connect.coupling()))
                .distinct()
                .collect(Collectors.joining("; "));
        Nets nets = new Nets(piece);
        double width = Math.max(LEAST_WIDTH, Math.min(drawing.width(), SheetFrame.roomAcross()));
        double column = width / Cell.columns(width) - GAP;
        List<List<String>> sentences = new JointText(joints, words)
                .at(piece.wires(), end -> !nets.isElsewhere(end)).stream()
                        .map(sentence -> FontWidths.wrapped(sentence, "\u2003", column, Sketch.TYPE))
                        .toList();
        String title = leads.isEmpty()
                ? piece.parts().stream().map(part -> part.id().value()).collect(Collectors.joining(", "))
                : words.of("schematic.detail", leads, couplings);
        return new Cell(FontWidths.fitted(title, width - INDENT, Sketch.TYPE, true), drawing, sentences);
    }

    /**
     * Row by row, from left to right, onto as many sheets as it takes.
     *
     * @param index where everything is drawn
     * @param numbers gets the sheet of each piece, from 1
     */
    private List<PlacedDrawing> packed(List<Plan> pieces, SheetIndex index, List<Integer> numbers) {
        List<PlacedDrawing> sheets = new ArrayList<>();
        PlacedDrawing sheet = empty();
        double x = 0;
        double y = 0;
        double rowHeight = 0;
        for (Plan piece : pieces) {
            List<Cell> cells = cell(piece, index).onPaper();
            for (Cell cell : cells) {
                if (x > 0 && !SheetFrame.fits(x + cell.width(), y + cell.height())) {
                    x = 0;
                    y += rowHeight + GAP;
                    rowHeight = 0;
                }
                if (y > 0 && x == 0 && !SheetFrame.fits(cell.width(), y + cell.height())) {
                    sheets.add(sheet);
                    sheet = empty();
                    y = 0;
                }
                if (cell.equals(cells.getFirst())) {
                    numbers.add(sheets.size() + 1);
                }
                sheet = with(sheet, cell, x, y);
                x += cell.width() + GAP;
                rowHeight = Math.max(rowHeight, cell.height());
            }
        }
        if (!pieces.isEmpty()) {
            sheets.add(sheet);
        }
        return sheets;
    }

    private static PlacedDrawing empty() {
        return new PlacedDrawing(0, 0, List.of(), List.of(), List.of());
    }

    private static PlacedDrawing with(PlacedDrawing sheet, Cell cell, double x, double y) {
        double width = Math.max(sheet.width(), x + cell.width());
        double height = Math.max(sheet.height(), y + cell.height());
        PlacedDrawing placed = cell.drawing().on(width, height, x, y + TITLE);
        Sketch s = new Sketch();
        s.letter(x + INDENT, y + LINE, cell.title(), cell.title(), Ink.Anchor.START, true);
        double below = y + TITLE + cell.drawing().height() + LINE - 2;
        double column = cell.width() / Cell.columns(cell.width());
        double across = x + INDENT;
        for (List<String> lines : cell.columns()) {
            for (int row = 0; row < lines.size(); row++) {
                s.letter(across, below + LINE * row, lines.get(row), Ink.Anchor.START);
            }
            across += column;
        }
        List<PlacedDrawing.Route> routes = new ArrayList<>(sheet.routes());
        routes.addAll(placed.routes());
        List<Point> dots = new ArrayList<>(sheet.joints());
        dots.addAll(placed.joints());
        List<Ink> ink = new ArrayList<>(sheet.ink());
        ink.addAll(placed.ink());
        return new PlacedDrawing(width, height, routes, dots, ink).with(s.ink());
    }
}
