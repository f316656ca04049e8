package org.loomproof.workshop.meter.synthetic;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The reliability figure: answers in ten classes by how sure they were called, with the share of each class that was right. */
final class Reliability {

    private static final int BINS = 10;

    /** Fewer answers than this in a class say nothing. */
    private static final int LEAST_COUNT = 30;

    private final int[] count = new int[BINS];
    private final double[] said = new double[BINS];
    private final int[] right = new int[BINS];

    void add(double sure, boolean isRight) {
        int bin = Math.min(BINS - 1, (int) (sure * BINS));
        count[bin]++;
        said[bin] += sure;
        right[bin] += isRight ? 1 : 0;
    }

    void addAll(Reliability other) {
        for (int k = 0; k < BINS; k++) {
            count[k] += other.count[k];
            said[k] += other.said[k];
            right[k] += other.right[k];
        }
    }

    private int all() {
        int all = 0;
        for (int each : count) {
            all += each;
        }
        return all;
    }

    /** The expected calibration error: the mean distance of said and so, each class by its size. */
    double gap() {
        double sum = 0;
        for (int k = 0; k < BINS; k++) {
            sum += Math.abs(said[k] - right[k]);
        }
        return sum / all();
    }

    /** The distance of said and so among the answers called surest. */
    double top() {
        return Math.abs(said[BINS - 1] - right[BINS - 1]) / Math.max(1, count[BINS - 1]);
    }

    /** How far chance alone may take the gap. */
    double spread() {
        return 0.5 / Math.sqrt(all());
    }

    /** Classes of some size that lie further out than that and three times what chance does to a class of their size. */
    List<String> binsFurtherOutThan(double limit) {
        List<String> out = new ArrayList<>();
        for (int k = 0; k < BINS; k++) {
            if (count[k] >= LEAST_COUNT) {
                double p = said[k] / count[k];
                double gap = Math.abs(p - right[k] / (double) count[k]);
                if (gap > limit + 3 * Math.sqrt(p * (1 - p) / count[k])) {
                    out.add(bin(k));
                }
            }
        }
        return out;
    }

    private String bin(int k) {
        return String.format(
                Locale.ROOT,
                "said %.0f %% so %.0f %% (%d)",
                100 * said[k] / count[k],
                100.0 * right[k] / count[k],
                count[k]);
    }

    @Override
    public String toString() {
        List<String> bins = new ArrayList<>();
        for (int k = 0; k < BINS; k++) {
            if (count[k] > 0) {
                bins.add(bin(k));
            }
        }
        return String.format(Locale.ROOT, "gap %.1f points, %s", 100 * gap(), String.join(", ", bins));
    }
}
