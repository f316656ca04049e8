package org.loomproof.papers.drawing;

import java.util.ArrayList;
import java.util.List;

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
