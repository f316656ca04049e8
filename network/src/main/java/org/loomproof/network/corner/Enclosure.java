package org.loomproof.network.corner;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.PriorityQueue;
import org.loomproof.network.solve.OperatingPoint;

/**
 * The extremes of a product of two readings, each of which is monotone in every quantity: the box is divided, the piece that
 * might hold the worst first. Within a piece either factor lies between its least and greatest at the piece's vertices, so
 * the product lies in the product of the two intervals (Moore, Interval Analysis, 1966; from memory).
 */
final class Enclosure {
    /** Divided until bound and value met are this close, as a part of the larger. */
    private static final double CLOSE = 1e-3;

    /** Points after which it is left at the bound reached. */
    private static final int MOST_POINTS = 20_000;

    private final Looking looking;
    private final Asked.Product asked;
    private final int quantities;

    /** A piece of the box, with the interval its product lies in. */
    private static final class Piece {
        final double[] from;
        final double[] to;
        final double low;
        final double high;

        Piece(double[] from, double[] to, double low, double high) {
            this.from = from;
            this.to = to;
            this.low = low;
            this.high = high;
        }
    }

    Enclosure(Looking looking, Asked.Product asked, int quantities) {
        this.looking = looking;
        this.asked = asked;
        this.quantities = quantities;
    }

    /** Bounds of all that lies in the box; nothing is known when some point does not settle. */
    WorstCase.Bounds search() {
        double high = bound(true);
        double low = bound(false);
        return looking.failed() ? WorstCase.Bounds.NONE : new WorstCase.Bounds(low, high);
    }

    private double bound(boolean greatest) {
        Comparator<Piece> worstFirst =
                greatest ? Comparator.comparingDouble(p -> -p.high) : Comparator.comparingDouble(p -> p.low);
        PriorityQueue<Piece> open = new PriorityQueue<>(worstFirst);
        double[] ends = new double[quantities];
        Arrays.fill(ends, 1);
        piece(new double[quantities], ends).ifPresent(open::add);
        int began = looking.points();
        while (!open.isEmpty()) {
            Piece worst = open.element();
            double bound = greatest ? worst.high : worst.low;
            double met = greatest ? looking.greatest().value() : looking.least().value();
            boolean close = Math.abs(bound - met) <= CLOSE * Math.max(Math.abs(bound), Math.abs(met));
            if (close || looking.points() - began >= MOST_POINTS / 2) {
                return bound;
            }
            open.remove();
            int widest = widest(worst);
            double middle = 0.5 * (worst.from[widest] + worst.to[widest]);
            double[] to = worst.to.clone();
            to[widest] = middle;
            double[] from = worst.from.clone();
            from[widest] = middle;
            Optional<Piece> lower = piece(worst.from, to);
            Optional<Piece> upper = piece(from, worst.to);
            if (lower.isEmpty() || upper.isEmpty()) {
                break;
            }
            open.add(lower.get());
            open.add(upper.get());
        }
        return greatest ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
    }

    private static int widest(Piece piece) {
        int widest = 0;
        for (int k = 1; k < piece.from.length; k++) {
            if (piece.to[k] - piece.from[k] > piece.to[widest] - piece.from[widest]) {
                widest = k;
            }
        }
        return widest;
    }

    private Optional<Piece> piece(double[] from, double[] to) {
        double[] first = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        double[] second = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (int vertex = 0; vertex < 1 << quantities; vertex++) {
            double[] place = new double[quantities];
            for (int k = 0; k < quantities; k++) {
                place[k] = (vertex >> k & 1) == 1 ? to[k] : from[k];
            }
            Optional<OperatingPoint> point = looking.look(place);
            if (point.isEmpty()) {
                return Optional.empty();
            }
            widen(first, asked.first().at(point.get()));
            widen(second, asked.second().at(point.get()));
        }
        double[] products = {
            first[0] * second[0], first[0] * second[1], first[1] * second[0], first[1] * second[1],
        };
        Arrays.sort(products);
        return Optional.of(new Piece(from, to, products[0], products[3]));
    }

    private static void widen(double[] interval, double value) {
        interval[0] = Math.min(interval[0], value);
        interval[1] = Math.max(interval[1], value);
    }
}
