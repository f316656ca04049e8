package org.loomproof.benchmarks.engine;

import java.util.Arrays;
import java.util.List;
import org.loomproof.network.part.Node;
import org.loomproof.network.time.Trace;

/**
 * A course as one side ran it: at each of its own moments the voltages of all nodes but the chassis.
 */
final class CourseRun {
    /** So near to a jump nothing is compared: a relay that moves a microsecond early is no error of 12 V. */
    private static final double NEAR_SECONDS = 30e-6;

    /** So much earlier or later is no error: where a clamp lets go, a node falls by tens of volts within microseconds. */
    private static final double FORGIVEN_SECONDS = 1e-6;

    private final double[] seconds;

    /** Per moment, node by node. */
    private final double[][] volts;

    private CourseRun(double[] seconds, double[][] volts) {
        this.seconds = seconds;
        this.volts = volts;
    }

    static CourseRun of(Trace trace) {
        List<Node> nodes = trace.network().nodes();
        double[] seconds =
                trace.moments().stream().mapToDouble(Double::doubleValue).toArray();
        double[][] volts = new double[seconds.length][nodes.size() - 1];
        for (int n = 1; n < nodes.size(); n++) {
            for (int k = 0; k < seconds.length; k++) {
                volts[k][n - 1] = trace.volts(nodes.get(n), seconds[k]);
            }
        }
        return new CourseRun(seconds, volts);
    }

    /** Points of the reference, each with its time first. */
    static CourseRun of(List<double[]> points) {
        double[] seconds = points.stream().mapToDouble(point -> point[0]).toArray();
        double[][] volts = points.stream()
                .map(point -> Arrays.copyOfRange(point, 1, point.length))
                .toArray(double[][]::new);
        return new CourseRun(seconds, volts);
    }

    /**
     * How far this run is out: at each node the root of the mean square over time of the distance to what a run far closer has
     * within {@link #FORGIVEN_SECONDS} of the moment, and of these the largest, volts.
     *
     * @param jumps moments about which a while is left out
     */
    double errorVolts(CourseRun exact, List<Double> jumps) {
        double[] squares = new double[volts[0].length];
        double[] least = new double[squares.length];
        double[] greatest = new double[squares.length];
        double whole = 0;
        int jump = 0;
        for (int k = 1; k + 1 < seconds.length; k++) {
            double t = seconds[k];
            while (jump < jumps.size() && jumps.get(jump) < t - NEAR_SECONDS) {
                jump++;
            }
            if (jump < jumps.size() && jumps.get(jump) <= t + NEAR_SECONDS) {
                continue;
            }
            double weight = 0.5 * (seconds[k + 1] - seconds[k - 1]);
            whole += weight;
            exact.range(t - FORGIVEN_SECONDS, t + FORGIVEN_SECONDS, least, greatest);
            for (int n = 0; n < squares.length; n++) {
                double miss = Math.max(0, Math.max(least[n] - volts[k][n], volts[k][n] - greatest[n]));
                squares[n] += weight * miss * miss;
            }
        }
        return Math.sqrt(Arrays.stream(squares).max().orElse(0) / whole);
    }

    /** The least and the greatest voltage of each node between two moments, along straight lines from point to point. */
    private void range(double from, double to, double[] least, double[] greatest) {
        int first = segment(from);
        int last = segment(to);
        for (int n = 0; n < least.length; n++) {
            double begin = at(first, from, n);
            double end = at(last, to, n);
            least[n] = Math.min(begin, end);
            greatest[n] = Math.max(begin, end);
            for (int k = first + 1; k <= last; k++) {
                least[n] = Math.min(least[n], volts[k][n]);
                greatest[n] = Math.max(greatest[n], volts[k][n]);
            }
        }
    }

    /** The last point before a moment that has one after it. */
    private int segment(double moment) {
        int found = Arrays.binarySearch(seconds, moment);
        int before = found >= 0 ? found : -found - 2;
        return Math.clamp(before, 0, seconds.length - 2);
    }

    private double at(int segment, double moment, int node) {
        double width = seconds[segment + 1] - seconds[segment];
        double share = width > 0 ? Math.clamp((moment - seconds[segment]) / width, 0, 1) : 1;
        return (1 - share) * volts[segment][node] + share * volts[segment + 1][node];
    }
}
