package org.loomproof.workshop.meter.drain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The plateaus of a log: of all ways of cutting it, exactly the one with the least sum of squares in logarithms of current plus a
 * price for each cut, by dynamic programming over the place of the last cut (optimal partitioning of Jackson et al. 2005).
 */
final class Plateaus {

    /** Under this everything counts as nothing: it keeps the logarithm finite. */
    static final double NOTHING_AMPS = 5e-4;

    /** From the median of absolute differences of neighbours to their standard deviation. */
    private static final double MEDIAN_TO_SPREAD = 0.6745 * Math.sqrt(2);

    /** Current ripples, and a log that scatters more has no plateaus. Common practice, no published source. */
    private static final double LEAST_SPREAD = 0.01;

    private static final double MOST_SPREAD = 0.12;

    /** Beside the price by number of samples: neighbours in time are not quite apart. Common practice, no published source. */
    private static final double FIXED_PRICE = 4;

    private Plateaus() {}

    /** The plateaus, in order; at least one. */
    static List<Plateau> of(List<Sample> samples) {
        Sums sums = Sums.of(samples);
        int n = samples.size();
        double[] least = new double[n + 1];
        int[] from = new int[n + 1];
        for (int end = 1; end <= n; end++) {
            least[end] = Double.POSITIVE_INFINITY;
            for (int start = 0; start < end; start++) {
                double cost = least[start] + sums.cost(start, end);
                if (cost < least[end]) {
                    least[end] = cost;
                    from[end] = start;
                }
            }
        }
        List<Plateau> plateaus = new ArrayList<>();
        for (int end = n; end > 0; end = from[end]) {
            int start = from[end];
            plateaus.addFirst(new Plateau(
                    samples.get(start).minutes(),
                    samples.get(end - 1).minutes(),
                    Math.max(0, Math.exp(sums.mean(start, end)) - NOTHING_AMPS),
                    end - start));
        }
        return plateaus;
    }

    /** What a way of cutting costs, by the ends of its plateaus. */
    static double price(List<Sample> samples, List<Integer> ends) {
        Sums sums = Sums.of(samples);
        double cost = 0;
        int start = 0;
        for (int end : ends) {
            cost += sums.cost(start, end);
            start = end;
        }
        return cost;
    }

    /** Sums of weights, and of logarithms and their squares by weight, up to each sample. */
    private static final class Sums {
        private final double[] w;
        private final double[] wx;
        private final double[] wxx;

        Sums(int samples) {
            w = new double[samples + 1];
            wx = new double[samples + 1];
            wxx = new double[samples + 1];
        }

        static Sums of(List<Sample> samples) {
            int n = samples.size();
            double[] x = samples.stream().mapToDouble(s -> logAmps(s.amps())).toArray();
            double ripple = ripple(x);
            Sums sums = new Sums(n);
            for (int i = 0; i < n; i++) {
                double error = samples.get(i).errorAmps() / (samples.get(i).amps() + NOTHING_AMPS);
                double weight = 1 / (ripple * ripple + error * error);
                sums.w[i + 1] = sums.w[i] + weight;
                sums.wx[i + 1] = sums.wx[i] + weight * x[i];
                sums.wxx[i + 1] = sums.wxx[i] + weight * x[i] * x[i];
            }
            return sums;
        }

        double mean(int start, int end) {
            return (wx[end] - wx[start]) / (w[end] - w[start]);
        }

        /** Squares about the mean, and three unknowns a cut: its place and a level, as Schwarz's criterion prices them. */
        double cost(int start, int end) {
            double sum = wx[end] - wx[start];
            double squares = wxx[end] - wxx[start] - sum * sum / (w[end] - w[start]);
            return squares + FIXED_PRICE + 3 * Math.log(w.length - 1.0);
        }
    }

    static double logAmps(double amps) {
        return Math.log(amps + NOTHING_AMPS);
    }

    private static double ripple(double[] x) {
        double[] steps = new double[x.length - 1];
        for (int i = 0; i + 1 < x.length; i++) {
            steps[i] = Math.abs(x[i + 1] - x[i]);
        }
        Arrays.sort(steps);
        double median = steps[steps.length / 2] / MEDIAN_TO_SPREAD;
        return Math.clamp(median, LEAST_SPREAD, MOST_SPREAD);
    }
}
