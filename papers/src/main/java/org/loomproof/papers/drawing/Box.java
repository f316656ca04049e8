package org.loomproof.papers.drawing;

/** An upright rectangle: left and top are less than right and bottom. */
public record Box(double left, double top, double right, double bottom) {

    /** True when the two share more than an edge. */
    public boolean overlaps(Box other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    /** True when a straight piece runs through the inside. */
    public boolean isCrossedBy(Point a, Point b) {
        double enter = 0;
        double leave = 1;
        double[][] sides = {
            {b.x() - a.x(), left - a.x(), right - a.x()},
            {b.y() - a.y(), top - a.y(), bottom - a.y()}
        };
        for (double[] side : sides) {
            double step = side[0];
            if (step == 0) {
                if (side[1] >= 0 || side[2] <= 0) {
                    return false;
                }
            } else {
                double first = Math.min(side[1] / step, side[2] / step);
                double last = Math.max(side[1] / step, side[2] / step);
                enter = Math.max(enter, first);
                leave = Math.min(leave, last);
            }
        }
        return enter < leave;
    }
}
