package org.loomproof.papers.plot;

import java.util.List;

/**
 * Curves of one unit over a common scale.
 *
 * @param unit as it stands beside the scale, in the reader's words
 * @param curves one or more
 */
record Panel(String unit, List<Curve> curves) {
    /** A named curve: seconds rising (equal at a jump), and values. */
    static final class Curve {
        private final String name;
        private final double[] seconds;
        private final double[] values;

        Curve(String name, double[] seconds, double[] values) {
            this.name = name;
            this.seconds = seconds;
            this.values = values;
        }

        String name() {
            return name;
        }

        double[] seconds() {
            return seconds;
        }

        double[] values() {
            return values;
        }

        double least() {
            double least = Double.POSITIVE_INFINITY;
            for (double value : values) {
                least = Math.min(least, value);
            }
            return least;
        }

        double greatest() {
            double greatest = Double.NEGATIVE_INFINITY;
            for (double value : values) {
                greatest = Math.max(greatest, value);
            }
            return greatest;
        }
    }

    Panel {
        curves = List.copyOf(curves);
    }

    /** The scale of all curves; zero is on it. */
    Axis axis(int about) {
        double least = curves.stream().mapToDouble(Curve::least).min().orElse(0);
        double greatest = curves.stream().mapToDouble(Curve::greatest).max().orElse(1);
        return Axis.onTicks(Math.min(0, least), Math.max(0, greatest), about);
    }
}
