package org.loomproof.papers.drawing;

/**
 * A place on a sheet.
 *
 * @param x to the right, in points of print (1/72 inch)
 * @param y downwards, in points of print
 */
public record Point(double x, double y) {

    /** This place moved. */
    public Point plus(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }
}
