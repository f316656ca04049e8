package org.loomproof.papers.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a draughtsman would find fault with on a sheet.
 *
 * @param crossings pairs of conductors that cross, counted where they cross
 * @param overlaps texts that lie on each other, as {@code one | other}
 * @param struck texts that a line runs through
 * @param outside texts that leave the sheet
 */
public record Inspection(int crossings, List<String> overlaps, List<String> struck, List<String> outside) {

    /** Points of print that a text may give way at its edge: less than a line's width. */
    private static final double SLACK = 0.3;

    /** Everything there is to find. */
    public static Inspection of(PlacedDrawing drawing) {
        List<Ink.Lettering> letters = drawing.listLettering();
        List<String> overlaps = new ArrayList<>();
        List<String> struck = new ArrayList<>();
        List<String> outside = new ArrayList<>();
        List<List<Point>> lines = listLines(drawing);
        Box sheet = new Box(0, 0, drawing.width(), drawing.height());
        for (int i = 0; i < letters.size(); i++) {
            Box box = shrunk(letters.get(i).box());
            for (int j = i + 1; j < letters.size(); j++) {
                if (box.overlaps(shrunk(letters.get(j).box()))) {
                    overlaps.add(letters.get(i).text() + " | " + letters.get(j).text());
                }
            }
            if (lines.stream().anyMatch(line -> isStruck(box, line))) {
                struck.add(letters.get(i).text());
            }
            if (box.left() < sheet.left()
                    || box.right() > sheet.right()
                    || box.top() < sheet.top()
                    || box.bottom() > sheet.bottom()) {
                outside.add(letters.get(i).text());
            }
        }
        return new Inspection(countCrossings(drawing), overlaps, struck, outside);
    }

    private static Box shrunk(Box box) {
        return new Box(box.left() + SLACK, box.top() + SLACK, box.right() - SLACK, box.bottom() - SLACK);
    }

    private static boolean isStruck(Box box, List<Point> line) {
        for (int i = 1; i < line.size(); i++) {
            if (box.isCrossedBy(line.get(i - 1), line.get(i))) {
                return true;
            }
        }
        return false;
    }

    private static List<List<Point>> listLines(PlacedDrawing drawing) {
        List<List<Point>> lines = new ArrayList<>();
        drawing.routes().forEach(route -> lines.add(route.corners()));
        for (Ink ink : drawing.ink()) {
            switch (ink) {
                case Ink.Line line -> lines.add(line.points());
                case Ink.Polygon polygon -> lines.add(closed(polygon.points()));
                case Ink.Ring ring -> lines.add(around(ring));
                case Ink.Lettering lettering -> {}
            }
        }
        return lines;
    }

    private static List<Point> closed(List<Point> points) {
        List<Point> all = new ArrayList<>(points);
        all.add(points.getFirst());
        return all;
    }

    private static List<Point> around(Ink.Ring ring) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= 16; i++) {
            double angle = 2 * Math.PI * i / 16;
            points.add(ring.centre().plus(ring.radius() * Math.cos(angle), ring.radius() * Math.sin(angle)));
        }
        return points;
    }

    /** How often conductors that are not joined cross each other. */
    public static int countCrossings(PlacedDrawing drawing) {
        int crossings = 0;
        List<PlacedDrawing.Route> routes = drawing.routes();
        for (int i = 0; i < routes.size(); i++) {
            for (int j = i + 1; j < routes.size(); j++) {
                if (!areJoined(routes.get(i).conductor(), routes.get(j).conductor())) {
                    crossings += countCrossings(
                            routes.get(i).corners(), routes.get(j).corners());
                }
            }
        }
        return crossings;
    }

    /**
     * How often each net is crossed by another, or by itself. A net is what is joined, conductor by conductor.
     *
     * @return one count a net, in no order
     */
    public static List<Integer> crossingsByNet(PlacedDrawing drawing) {
        List<PlacedDrawing.Route> routes = drawing.routes();
        int[] nets = nets(routes);
        Map<Integer, Integer> counts = new LinkedHashMap<>();
        for (int i = 0; i < nets.length; i++) {
            counts.putIfAbsent(nets[i], 0);
            for (int j = i + 1; j < nets.length; j++) {
                int crossings = areJoined(
                                routes.get(i).conductor(), routes.get(j).conductor())
                        ? 0
                        : countCrossings(routes.get(i).corners(), routes.get(j).corners());
                counts.merge(nets[i], crossings, Integer::sum);
                if (nets[j] != nets[i]) {
                    counts.merge(nets[j], crossings, Integer::sum);
                }
            }
        }
        return List.copyOf(counts.values());
    }

    /** The number of each route's net. */
    private static int[] nets(List<PlacedDrawing.Route> routes) {
        int[] nets = new int[routes.size()];
        for (int i = 0; i < nets.length; i++) {
            nets[i] = i;
            for (int j = 0; j < i; j++) {
                if (nets[j] != nets[i]
                        && areJoined(routes.get(i).conductor(), routes.get(j).conductor())) {
                    int old = nets[j];
                    for (int k = 0; k <= i; k++) {
                        nets[k] = nets[k] == old ? nets[i] : nets[k];
                    }
                }
            }
        }
        return nets;
    }

    private static boolean areJoined(Conductor one, Conductor other) {
        List<String> ends = ends(other);
        return ends(one).stream().anyMatch(ends::contains);
    }

    private static List<String> ends(Conductor conductor) {
        return List.of(
                conductor.fromBlock() + "\n" + conductor.fromPort(), conductor.toBlock() + "\n" + conductor.toPort());
    }

    private static int countCrossings(List<Point> one, List<Point> other) {
        int crossings = 0;
        for (int i = 1; i < one.size(); i++) {
            for (int j = 1; j < other.size(); j++) {
                if (cross(one.get(i - 1), one.get(i), other.get(j - 1), other.get(j))) {
                    crossings++;
                }
            }
        }
        return crossings;
    }

    private static boolean cross(Point a, Point b, Point c, Point d) {
        return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
    }

    private static double turn(Point a, Point b, Point c) {
        return Math.signum((b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x()));
    }
}
