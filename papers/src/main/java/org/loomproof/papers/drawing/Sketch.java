package org.loomproof.papers.drawing;

import java.util.ArrayList;
import java.util.List;

/** Gathers ink while a block is drawn; it is thrown away when the block is done. */
public final class Sketch {

    /** Height of ordinary lettering in points of print: the least that is comfortable to read on paper. */
    public static final double TYPE = 7;

    private static final String NO_FILL = "none";

    private final List<Ink> ink = new ArrayList<>();

    /** What was drawn. */
    public List<Ink> ink() {
        return List.copyOf(ink);
    }

    /** Puts other ink in, moved. */
    public void put(List<Ink> other, double dx, double dy) {
        other.forEach(i -> ink.add(i.moved(dx, dy)));
    }

    /** A line through the points x, y, x, y, … */
    public void line(Pen pen, double... coordinates) {
        ink.add(new Ink.Line(points(coordinates), pen));
    }

    /** A closed shape through the points x, y, x, y, … without filling. */
    public void outline(Pen pen, double... coordinates) {
        ink.add(new Ink.Polygon(points(coordinates), pen, NO_FILL));
    }

    /** A filled shape through the points x, y, x, y, … */
    public void filled(String fill, double... coordinates) {
        ink.add(new Ink.Polygon(points(coordinates), Pen.INK, fill));
    }

    /** An upright rectangle. */
    public void rectangle(Pen pen, String fill, double x, double y, double width, double height) {
        ink.add(new Ink.Polygon(points(x, y, x + width, y, x + width, y + height, x, y + height), pen, fill));
    }

    /** A circle with the paper inside. */
    public void ring(double x, double y, double radius) {
        ink.add(new Ink.Ring(new Point(x, y), radius, Pen.INK, "#ffffff"));
    }

    /** A joint: conductors that meet here are joined. */
    public void joint(double x, double y) {
        ink.add(new Ink.Ring(new Point(x, y), 1.6, Pen.INK, Pen.INK.colour()));
    }

    /** Ordinary lettering. */
    public void letter(double x, double y, String text, Ink.Anchor anchor) {
        letter(x, y, text, text, anchor, false);
    }

    /** Lettering that was shortened from a longer text. */
    public void letter(double x, double y, String text, String whole, Ink.Anchor anchor, boolean bold) {
        if (!text.isEmpty()) {
            ink.add(new Ink.Lettering(new Point(x, y), text, whole, TYPE, anchor, bold));
        }
    }

    private static List<Point> points(double... coordinates) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i + 1 < coordinates.length; i += 2) {
            points.add(new Point(coordinates[i], coordinates[i + 1]));
        }
        return points;
    }
}
