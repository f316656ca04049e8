package org.loomproof.papers.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A drawing with everything in its place.
 *
 * @param width of the sheet in points of print
 * @param height of the sheet in points of print
 * @param routes the conductors' ways, each with the id of its conductor
 * @param joints where conductors that belong together meet
 * @param ink symbols and lettering, in the sheet's own coordinates
 */
public record PlacedDrawing(double width, double height, List<Route> routes, List<Point> joints, List<Ink> ink) {

    public PlacedDrawing {
        routes = List.copyOf(routes);
        joints = List.copyOf(joints);
        ink = List.copyOf(ink);
    }

    /** The way of one conductor: corner by corner. */
    public record Route(Conductor conductor, List<Point> corners) {
        public Route {
            corners = List.copyOf(corners);
        }
    }

    /** The same on a sheet of another size, moved. */
    public PlacedDrawing on(double sheetWidth, double sheetHeight, double dx, double dy) {
        return new PlacedDrawing(
                sheetWidth,
                sheetHeight,
                routes.stream()
                        .map(r -> new Route(
                                r.conductor(),
                                r.corners().stream().map(p -> p.plus(dx, dy)).toList()))
                        .toList(),
                joints.stream().map(p -> p.plus(dx, dy)).toList(),
                ink.stream().map(i -> i.moved(dx, dy)).toList());
    }

    /** The same with more ink. */
    public PlacedDrawing with(List<Ink> more) {
        List<Ink> all = new ArrayList<>(ink);
        all.addAll(more);
        return new PlacedDrawing(width, height, routes, joints, all);
    }

    /** The same drawn with other pens and other letters, everything in its place. */
    public PlacedDrawing redrawn(UnaryOperator<Pen> pens, UnaryOperator<Ink.Lettering> letters) {
        return new PlacedDrawing(
                width,
                height,
                routes.stream()
                        .map(r -> new Route(
                                r.conductor().with(pens.apply(r.conductor().pen())), r.corners()))
                        .toList(),
                joints,
                ink.stream().map(i -> i.redrawn(pens, letters)).toList());
    }

    /** All lettering. */
    public List<Ink.Lettering> listLettering() {
        List<Ink.Lettering> all = new ArrayList<>();
        for (Ink one : ink) {
            if (one instanceof Ink.Lettering lettering) {
                all.add(lettering);
            }
        }
        return all;
    }
}
