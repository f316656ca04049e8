package org.loomproof.papers.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.loomproof.papers.drawing.Ink;
import org.loomproof.papers.drawing.Pen;
import org.loomproof.papers.drawing.PlacedDrawing;
import org.loomproof.papers.drawing.Point;
import org.loomproof.papers.markup.Element;

/**
 * Writes a placed drawing as SVG on a white sheet: insulation is drawn in its own colours, and those mean nothing on a
 * dark ground. No style sheet and no identifiers, so that several may stand on one page.
 */
public final class SvgDrawing {

    private static final String FONTS = "'DejaVu Sans', Verdana, 'Segoe UI', Arial, sans-serif";
    private static final String EDGE = "#2b333b";

    /** Points of print on each side: thinner, a white wire is lost on a small screen. */
    private static final double EDGE_WIDTH = 0.6;

    private SvgDrawing() {}

    /**
     * One sheet as an {@code svg} element, as wide in print as A4 across.
     *
     * @param title what it shows, for those who cannot see it
     */
    public static Element of(PlacedDrawing drawing, String title) {
        Element svg = Element.of("svg")
                .with("xmlns", "http://www.w3.org/2000/svg")
                .with("viewBox", "0 0 " + number(drawing.width()) + " " + number(drawing.height()))
                .with("width", "297mm")
                .with("height", number(297 * drawing.height() / drawing.width()) + "mm")
                .with("role", "img")
                .with("aria-label", title)
                .with("font-family", FONTS)
                .with("fill", Pen.INK.colour())
                .add(
                        Element.of("title", title),
                        Element.of("rect")
                                .with("width", number(drawing.width()))
                                .with("height", number(drawing.height()))
                                .with("fill", "#ffffff"));
        Element conductors = Element.of("g").with("fill", "none").with("stroke-linejoin", "round");
        for (PlacedDrawing.Route route : drawing.routes()) {
            conductors =
                    conductors.addAll(line(route.corners(), route.conductor().pen()));
        }
        Element symbols = Element.of("g").with("stroke-linejoin", "round");
        for (Ink ink : drawing.ink()) {
            symbols = symbols.addAll(drawn(ink));
        }
        Element joints = Element.of("g");
        for (Point joint : drawing.joints()) {
            joints = joints.add(circle(joint, 2.1));
        }
        return svg.add(conductors, symbols, joints);
    }

    /** Several sheets below each other in one element. */
    public static Element stacked(List<PlacedDrawing> sheets, String title) {
        double width = sheets.stream().mapToDouble(PlacedDrawing::width).max().orElse(1);
        Element all = Element.of("svg").with("xmlns", "http://www.w3.org/2000/svg");
        double y = 0;
        List<Element> placed = new ArrayList<>();
        for (PlacedDrawing sheet : sheets) {
            double height = width * sheet.height() / sheet.width();
            placed.add(of(sheet, title)
                    .with("y", number(y))
                    .with("width", number(width))
                    .with("height", number(height)));
            y += height;
        }
        return all.with("viewBox", "0 0 " + number(width) + " " + number(y))
                .with("width", "297mm")
                .with("height", number(297 * y / width) + "mm")
                .addAll(placed);
    }

    private static List<Element> drawn(Ink ink) {
        return switch (ink) {
            case Ink.Line line -> line(line.points(), line.pen());
            case Ink.Polygon polygon ->
                List.of(stroked(Element.of("path").with("d", path(polygon.points()) + "z"), polygon.pen())
                        .with("fill", polygon.fill()));
            case Ink.Ring ring ->
                List.of(stroked(circle(ring.centre(), ring.radius()), ring.pen())
                        .with("fill", ring.fill()));
            case Ink.Lettering lettering -> List.of(lettering(lettering));
        };
    }

    private static Element circle(Point centre, double radius) {
        return Element.of("circle")
                .with("cx", number(centre.x()))
                .with("cy", number(centre.y()))
                .with("r", number(radius));
    }

    /** A conductor is a dark edge, the base on it and the tracer as dashes on that. */
    private static List<Element> line(List<Point> points, Pen pen) {
        Element way = Element.of("path").with("d", path(points)).with("fill", "none");
        Element base = stroked(way, pen);
        if (!pen.edged()) {
            return List.of(base);
        }
        Element edge = way.with("stroke", EDGE).with("stroke-width", number(pen.width() + 2 * EDGE_WIDTH));
        return pen.tracer()
                .map(tracer -> List.of(
                        edge,
                        base,
                        way.with("stroke", tracer)
                                .with("stroke-width", number(pen.width()))
                                .with("stroke-dasharray", "4 5")))
                .orElse(List.of(edge, base));
    }

    private static Element stroked(Element shape, Pen pen) {
        Element stroked = shape.with("stroke", pen.colour()).with("stroke-width", number(pen.width()));
        return pen.dashed() ? stroked.with("stroke-dasharray", "2.5 2") : stroked;
    }

    private static Element lettering(Ink.Lettering lettering) {
        Element text = Element.of("text")
                .with("x", number(lettering.at().x()))
                .with("y", number(lettering.at().y()))
                .with("font-size", number(lettering.size()));
        if (lettering.anchor() != Ink.Anchor.START) {
            text = text.with("text-anchor", lettering.anchor().name().toLowerCase(Locale.ROOT));
        }
        if (lettering.bold()) {
            text = text.with("font-weight", "700");
        }
        if (!lettering.whole().equals(lettering.text())) {
            text = text.add(Element.of("title", lettering.whole()));
        }
        return text.add(lettering.text());
    }

    private static String path(List<Point> points) {
        StringBuilder path = new StringBuilder();
        for (Point point : points) {
            path.append(path.isEmpty() ? "M" : "L")
                    .append(number(point.x()))
                    .append(' ')
                    .append(number(point.y()));
        }
        return path.toString();
    }

    private static String number(double value) {
        double rounded = Math.round(value * 100) / 100.0;
        return rounded == Math.rint(rounded) ? String.valueOf((long) rounded) : String.valueOf(rounded);
    }
}
