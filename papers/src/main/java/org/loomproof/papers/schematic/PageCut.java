package org.loomproof.papers.schematic;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.loomproof.papers.drawing.FontWidths;
import org.loomproof.papers.drawing.Ink;
import org.loomproof.papers.drawing.PlacedDrawing;
import org.loomproof.papers.drawing.Point;
import org.loomproof.papers.drawing.Sketch;
import org.loomproof.papers.page.Wording;

/**
 * Cuts a drawing that is too wide for a sheet into parts that are not, from left to right, where nothing but conductors runs.
 * Each conductor that is cut says on both sides which it is and that it goes on.
 */
final class PageCut {

    /** Points between two conductors at a cut, so that what is written on one is clear of the other. */
    private static final double PITCH = 11;

    /** Points between two upright pieces of conductor on the way to their places. */
    private static final double TRACK = 3;

    /** Points by which a cut must make what is left narrower. */
    private static final double LEAST_GAIN = 50;

    private static final double ROOM = SheetFrame.roomAcross();

    private final PlacedDrawing drawing;
    private final Wording words;

    private PageCut(PlacedDrawing drawing, Wording words) {
        this.drawing = drawing;
        this.words = words;
    }

    /** The parts; the drawing alone where it fits, and where nothing can be cut. */
    static List<PlacedDrawing> of(PlacedDrawing drawing, Wording words) {
        if (drawing.width() <= ROOM) {
            return List.of(drawing);
        }
        List<Double> gaps = gaps(drawing);
        for (int i = gaps.size() - 1; i >= 0; i--) {
            List<PlacedDrawing> two = new PageCut(drawing, words).at(gaps.get(i));
            if (two.getFirst().width() <= ROOM && two.getLast().width() < drawing.width() - LEAST_GAIN) {
                List<PlacedDrawing> all = new ArrayList<>(List.of(two.getFirst()));
                all.addAll(of(two.getLast(), words));
                return all;
            }
        }
        return List.of(drawing);
    }

    /** For each upright stripe without ink, from left to right, where in it the fewest conductors are cut. */
    private static List<Double> gaps(PlacedDrawing drawing) {
        List<double[]> spans = new ArrayList<>();
        drawing.ink().forEach(ink -> spans.add(span(ink)));
        spans.sort(Comparator.comparingDouble(span -> span[0]));
        List<Double> gaps = new ArrayList<>();
        double end = spans.isEmpty() ? 0 : spans.getFirst()[1];
        for (double[] span : spans) {
            if (span[0] > end + 2 * TRACK) {
                double from = end;
                gaps.add(Stream.of(from + 1, (from + span[0]) / 2, span[0] - 1)
                        .min(Comparator.comparingLong(x -> countCut(drawing, x)))
                        .orElseThrow());
            }
            end = Math.max(end, span[1]);
        }
        return gaps;
    }

    private static long countCut(PlacedDrawing drawing, double x) {
        return drawing.routes().stream()
                .mapToLong(route -> IntStream.range(1, route.corners().size())
                        .filter(i -> crosses(
                                route.corners().get(i - 1), route.corners().get(i), x))
                        .count())
                .sum();
    }

    private static double[] span(Ink ink) {
        return switch (ink) {
            case Ink.Line line -> span(line.points());
            case Ink.Polygon polygon -> span(polygon.points());
            case Ink.Ring ring ->
                new double[] {ring.centre().x() - ring.radius(), ring.centre().x() + ring.radius()};
            case Ink.Lettering letters ->
                new double[] {letters.box().left(), letters.box().right()};
        };
    }

    private static double[] span(List<Point> points) {
        return new double[] {
            points.stream().mapToDouble(Point::x).min().orElse(0),
            points.stream().mapToDouble(Point::x).max().orElse(0)
        };
    }

    /** Both sides of a cut, each with a strip in which the conductors come apart and are written on. */
    private List<PlacedDrawing> at(double x) {
        Map<Double, Set<String>> cut = new TreeMap<>();
        for (PlacedDrawing.Route route : drawing.routes()) {
            for (int i = 1; i < route.corners().size(); i++) {
                if (crosses(route.corners().get(i - 1), route.corners().get(i), x)) {
                    cut.computeIfAbsent(route.corners().get(i).y(), y -> new LinkedHashSet<>())
                            .add(route.conductor().id());
                }
            }
        }
        Strip before = new Strip(cut, x, "schematic.next-part", words);
        Strip after = new Strip(cut, x, "schematic.part-before", words);
        double height = Math.max(drawing.height(), before.lowest() + 4);
        PlacedDrawing left = side(x, true, before).on(x + before.width(), height, 0, 0);
        PlacedDrawing right =
                side(x, false, after).on(drawing.width() - x + after.width(), height, after.width() - x, 0);
        return List.of(left, right);
    }

    private static boolean crosses(Point a, Point b, double x) {
        return (a.x() < x) != (b.x() < x);
    }

    private PlacedDrawing side(double x, boolean isLeft, Strip strip) {
        List<PlacedDrawing.Route> routes = new ArrayList<>();
        for (PlacedDrawing.Route route : drawing.routes()) {
            List<Point> piece = new ArrayList<>();
            for (int i = 0; i < route.corners().size(); i++) {
                Point here = route.corners().get(i);
                if (i > 0 && crosses(route.corners().get(i - 1), here, x)) {
                    boolean leaves = !piece.isEmpty();
                    if (leaves) {
                        piece.addAll(strip.way(here.y(), isLeft));
                        routes.add(new PlacedDrawing.Route(route.conductor(), piece));
                        piece = new ArrayList<>();
                    } else {
                        piece.addAll(strip.way(here.y(), isLeft).reversed());
                    }
                }
                if ((here.x() < x) == isLeft) {
                    piece.add(here);
                }
            }
            if (!piece.isEmpty()) {
                routes.add(new PlacedDrawing.Route(route.conductor(), piece));
            }
        }
        List<Ink> ink = new ArrayList<>(drawing.ink().stream()
                .filter(each -> (span(each)[0] < x) == isLeft)
                .toList());
        ink.addAll(strip.lettering(isLeft));
        return new PlacedDrawing(
                drawing.width(),
                drawing.height(),
                routes,
                drawing.joints().stream().filter(dot -> (dot.x() < x) == isLeft).toList(),
                ink);
    }

    /** Where the cut conductors come apart, in the order in which they arrive. */
    private static final class Strip {

        private final double x;
        private final List<Double> arrive;
        private final List<Double> leave = new ArrayList<>();
        private final List<String> texts;
        private final double label;

        Strip(Map<Double, Set<String>> cut, double x, String key, Wording words) {
            this.x = x;
            arrive = List.copyOf(cut.keySet());
            texts = cut.values().stream()
                    .map(ids -> words.of(key, String.join(", ", ids)))
                    .collect(Collectors.toList());
            label = texts.stream()
                    .mapToDouble(text -> FontWidths.width(text, Sketch.TYPE, false))
                    .max()
                    .orElse(0);
            double last = Double.NEGATIVE_INFINITY;
            for (double y : arrive) {
                last = Math.max(Math.max(y, PITCH), last + PITCH);
                leave.add(last);
            }
        }

        double width() {
            return tracks() + label + 6;
        }

        private double tracks() {
            return TRACK * (arrive.size() + 1);
        }

        double lowest() {
            return leave.isEmpty() ? 0 : leave.getLast();
        }

        /** From the cut outwards: all move down or stay, so the lowest turns first and none crosses another. */
        List<Point> way(double y, boolean isLeft) {
            int i = arrive.indexOf(y);
            double out = isLeft ? 1 : -1;
            double turn = x + out * TRACK * (arrive.size() - i);
            List<Point> way = new ArrayList<>();
            if (leave.get(i) - y > 1e-9) {
                way.add(new Point(turn, y));
                way.add(new Point(turn, leave.get(i)));
            }
            way.add(new Point(x + out * width(), leave.get(i)));
            return way;
        }

        List<Ink> lettering(boolean isLeft) {
            Sketch s = new Sketch();
            for (int i = 0; i < texts.size(); i++) {
                double at = isLeft ? x + tracks() + 3 : x - tracks() - 3;
                s.letter(at, leave.get(i) - 3, texts.get(i), isLeft ? Ink.Anchor.START : Ink.Anchor.END);
            }
            return s.ink();
        }
    }
}
