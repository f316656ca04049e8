package org.loomproof.papers.schematic;

import org.loomproof.papers.drawing.FontWidths;
import org.loomproof.papers.drawing.Ink;
import org.loomproof.papers.drawing.Pen;
import org.loomproof.papers.drawing.PlacedDrawing;
import org.loomproof.papers.drawing.Sketch;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Brief;

/**
 * The border, the heading and the legend around a drawing, on a sheet as large as the printer makes it at least: what Letter
 * has room for, lying; on A4 it is printed a little larger. A drawing that is too large gets a larger sheet of the same shape, to be printed
 * smaller.
 */
final class SheetFrame {

    /** Points of print on Letter: 268 mm by 189.5 mm. */
    static final double WIDTH = 759.7;

    static final double HEIGHT = 537.2;

    /** A small drawing is printed larger, up to 1 / this. */
    private static final double LARGEST = 0.8;

    private static final double MARGIN = 4;
    private static final double HEAD = 34;
    private static final double FOOT = 16;

    private final Brief brief;
    private final Wording words;

    SheetFrame(Brief brief, Wording words) {
        this.brief = brief;
        this.words = words;
    }

    /** True when the drawing can be printed without being made smaller. */
    static boolean fits(PlacedDrawing drawing) {
        return fits(drawing.width(), drawing.height());
    }

    /** Points that the frame leaves a drawing across the sheet. */
    static double roomAcross() {
        return WIDTH - 2 * MARGIN;
    }

    static boolean fits(double width, double height) {
        return scale(width, height) <= 1;
    }

    private static double scale(double width, double height) {
        double across = (width + 2 * MARGIN) / WIDTH;
        double down = (height + 2 * MARGIN + HEAD + FOOT) / HEIGHT;
        return Math.max(across, down);
    }

    /**
     * A sheet of the schematic.
     *
     * @param hasZones whether the vehicle is on its left and the controller on its right
     */
    PlacedDrawing around(PlacedDrawing content, int number, int count, boolean hasZones) {
        return around(content, words.of("schematic.sheet", String.valueOf(number), String.valueOf(count)), hasZones);
    }

    /** A sheet of details. */
    PlacedDrawing aroundDetails(PlacedDrawing content, int number, int count) {
        return around(
                content, words.of("schematic.detail-sheet", String.valueOf(number), String.valueOf(count)), false);
    }

    private PlacedDrawing around(PlacedDrawing content, String sheet, boolean hasZones) {
        double k = Math.max(LARGEST, scale(content.width(), content.height()));
        double width = WIDTH * k;
        double height = HEIGHT * k;
        Sketch s = new Sketch();
        double left = MARGIN;
        double right = width - MARGIN;
        double bottom = height - MARGIN;
        s.rectangle(Pen.OUTLINE, "none", left, MARGIN, right - left, bottom - MARGIN);
        s.line(Pen.OUTLINE, left, MARGIN + 17, right, MARGIN + 17);
        s.line(Pen.OUTLINE, left, bottom - FOOT, right, bottom - FOOT);
        s.letter(right - 6, MARGIN + 11.5, sheet, Ink.Anchor.END);
        double room = right - left - 24 - FontWidths.width(sheet, Sketch.TYPE, false);
        String job = heading(room);
        s.letter(left + 6, MARGIN + 11.5, FontWidths.fitted(job, room, Sketch.TYPE, true), job, Ink.Anchor.START, true);
        String legend = words.of("schematic.legend");
        s.letter(
                left + 6,
                bottom - 5.5,
                FontWidths.fitted(legend, right - left - 12, Sketch.TYPE, false),
                legend,
                Ink.Anchor.START,
                false);
        double dx = MARGIN + Math.max(0, (right - left - content.width()) / 2);
        if (hasZones) {
            zone(s, "schematic.vehicle", dx + 6, Ink.Anchor.START);
            zone(s, "schematic.couplings", dx + content.width() / 2, Ink.Anchor.MIDDLE);
            zone(s, "schematic.controller", dx + content.width() - 6, Ink.Anchor.END);
        }
        return content.on(width, height, dx, MARGIN + HEAD).with(s.ink());
    }

    /** Job, kit and vehicle; the vehicle is left out where it would be cut off, or the job is named after it. */
    private String heading(double room) {
        String job = brief.order().job();
        String vehicle = brief.sheet().vehicle().name();
        String whole = words.of("schematic.heading", job, vehicle, brief.kit().name());
        boolean isRoom = FontWidths.width(whole, Sketch.TYPE, true) <= room && !job.contains(vehicle);
        return isRoom
                ? whole
                : words.of("schematic.heading-short", job, brief.kit().name());
    }

    private void zone(Sketch s, String key, double x, Ink.Anchor anchor) {
        s.letter(x, MARGIN + 28, words.of(key), words.of(key), anchor, true);
    }
}
