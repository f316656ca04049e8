package org.loomproof.network.part;

import java.util.List;

/**
 * When a fuse opens, as its maker or its standard publishes it: for rising multiples of the rating the earliest and the
 * latest time. Between two multiples times lie on a straight line in logarithms of both; beyond the last they fall as the
 * square of the current (the same I²t). Below the first multiple it carries for ever.
 *
 * @param points two or more, multiples rising, times falling
 */
public record TimeCurrentBand(List<Point> points) {
    /**
     * One line of the table.
     *
     * @param multiple current over rating, above zero
     * @param earliestSeconds above zero
     * @param latestSeconds not below the earliest
     */
    public record Point(double multiple, double earliestSeconds, double latestSeconds) {
        public Point {
            if (!(multiple > 0) || !(earliestSeconds > 0) || !(latestSeconds >= earliestSeconds)) {
                throw new IllegalArgumentException(
                        "a point of the band needs a multiple and times above zero, the latest not below the earliest: was "
                                + multiple + ", " + earliestSeconds + ", " + latestSeconds);
            }
            if (Double.isInfinite(multiple) || Double.isInfinite(latestSeconds)) {
                throw new IllegalArgumentException("a band's figures must be finite");
            }
        }
    }

    /** Which side of the band is meant. */
    public enum Edge {
        EARLIEST,
        LATEST
    }

    public TimeCurrentBand {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("a band needs two points or more, was " + points);
        }
        for (int k = 1; k < points.size(); k++) {
            Point before = points.get(k - 1);
            Point here = points.get(k);
            if (here.multiple() <= before.multiple()
                    || here.earliestSeconds() > before.earliestSeconds()
                    || here.latestSeconds() > before.latestSeconds()) {
                throw new IllegalArgumentException(
                        "multiples must rise and times must not: " + before + ", then " + here);
            }
        }
    }

    /** Seconds until a fuse opens at a steady multiple of its rating; infinite below the first point. */
    public double seconds(double multiple, Edge edge) {
        if (multiple < points.getFirst().multiple()) {
            return Double.POSITIVE_INFINITY;
        }
        Point last = points.getLast();
        if (multiple >= last.multiple()) {
            double ratio = last.multiple() / multiple;
            return at(last, edge) * ratio * ratio;
        }
        int right = 1;
        while (points.get(right).multiple() <= multiple) {
            right++;
        }
        Point from = points.get(right - 1);
        Point to = points.get(right);
        double share = Math.log(multiple / from.multiple()) / Math.log(to.multiple() / from.multiple());
        return at(from, edge) * Math.pow(at(to, edge) / at(from, edge), share);
    }

    private static double at(Point point, Edge edge) {
        return switch (edge) {
            case EARLIEST -> point.earliestSeconds();
            case LATEST -> point.latestSeconds();
        };
    }
}
