package org.loomproof.papers.drawing;

import java.util.List;
import java.util.function.UnaryOperator;

/** One thing that is drawn. */
public sealed interface Ink {

    /** This thing moved. */
    Ink moved(double dx, double dy);

    /** This thing drawn with other pens and other letters, in its place. */
    default Ink redrawn(UnaryOperator<Pen> pens, UnaryOperator<Lettering> letters) {
        return switch (this) {
            case Line line -> new Line(line.points(), pens.apply(line.pen()));
            case Polygon polygon -> new Polygon(polygon.points(), pens.apply(polygon.pen()), polygon.fill());
            case Ring ring -> new Ring(ring.centre(), ring.radius(), pens.apply(ring.pen()), ring.fill());
            case Lettering lettering -> letters.apply(lettering);
        };
    }

    /** Straight pieces from point to point. */
    record Line(List<Point> points, Pen pen) implements Ink {
        public Line {
            points = List.copyOf(points);
        }

        @Override
        public Line moved(double dx, double dy) {
            return new Line(points.stream().map(p -> p.plus(dx, dy)).toList(), pen);
        }
    }

    /**
     * A closed shape.
     *
     * @param fill as {@code #rrggbb}, or {@code none}
     */
    record Polygon(List<Point> points, Pen pen, String fill) implements Ink {
        public Polygon {
            points = List.copyOf(points);
        }

        @Override
        public Polygon moved(double dx, double dy) {
            return new Polygon(points.stream().map(p -> p.plus(dx, dy)).toList(), pen, fill);
        }
    }

    /**
     * A circle.
     *
     * @param fill as {@code #rrggbb}, or {@code none}
     */
    record Ring(Point centre, double radius, Pen pen, String fill) implements Ink {
        @Override
        public Ring moved(double dx, double dy) {
            return new Ring(centre.plus(dx, dy), radius, pen, fill);
        }
    }

    /**
     * A line of text.
     *
     * @param at where its base line starts, has its middle or ends
     * @param text what is shown
     * @param whole what it stands for when it had to be shortened; otherwise the same
     * @param size height of the type in points of print
     * @param anchor which part of the text stands at {@code at}
     * @param bold whether it is set bold
     */
    record Lettering(Point at, String text, String whole, double size, Anchor anchor, boolean bold) implements Ink {
        @Override
        public Lettering moved(double dx, double dy) {
            return new Lettering(at.plus(dx, dy), text, whole, size, anchor, bold);
        }

        /** Another text in the same place. */
        public Lettering saying(String other) {
            return new Lettering(at, other, other, size, anchor, bold);
        }

        /** The room the text takes. */
        public Box box() {
            double width = FontWidths.width(text, size, bold);
            double left = switch (anchor) {
                case START -> at.x();
                case MIDDLE -> at.x() - width / 2;
                case END -> at.x() - width;
            };
            return new Box(left, at.y() - FontWidths.ASCENT * size, left + width, at.y() + FontWidths.DESCENT * size);
        }
    }

    /** Which part of a text stands at its point. */
    enum Anchor {
        START,
        MIDDLE,
        END
    }
}
