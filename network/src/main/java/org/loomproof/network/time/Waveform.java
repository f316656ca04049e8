package org.loomproof.network.time;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A voltage against time in straight pieces, such as a supply while an engine is cranked. Before the first corner and after
 * the last it stands still; two corners at one time make a jump.
 *
 * @param corners one or more, times rising or equal
 */
public record Waveform(List<Corner> corners) {
    /** A point of the line: seconds from the start of the run, volts. */
    public record Corner(double seconds, double volts) {
        public Corner {
            if (!Double.isFinite(seconds) || !Double.isFinite(volts)) {
                throw new IllegalArgumentException("a corner must be finite, was " + seconds + " s, " + volts + " V");
            }
        }
    }

    public Waveform {
        corners = List.copyOf(corners);
        if (corners.isEmpty()) {
            throw new IllegalArgumentException("a waveform needs a corner");
        }
        for (int k = 1; k < corners.size(); k++) {
            if (corners.get(k).seconds() < corners.get(k - 1).seconds()) {
                throw new IllegalArgumentException(
                        "times must not fall: " + corners.get(k - 1) + ", then " + corners.get(k));
            }
        }
    }

    /** Corners given as seconds, volts, seconds, volts … */
    public static Waveform of(double... secondsAndVolts) {
        if (secondsAndVolts.length % 2 != 0) {
            throw new IllegalArgumentException("seconds without volts: " + Arrays.toString(secondsAndVolts));
        }
        List<Corner> corners = new ArrayList<>();
        for (int k = 0; k < secondsAndVolts.length; k += 2) {
            corners.add(new Corner(secondsAndVolts[k], secondsAndVolts[k + 1]));
        }
        return new Waveform(corners);
    }

    /** Volts at a time; at a jump those after it. */
    public double volts(double seconds) {
        return volts(seconds, true);
    }

    /** Volts just before a time; differs from {@link #volts(double)} at a jump only. */
    double voltsBefore(double seconds) {
        return volts(seconds, false);
    }

    private double volts(double seconds, boolean afterJump) {
        int passed = 0;
        while (passed < corners.size()
                && (corners.get(passed).seconds() < seconds
                        || (afterJump && corners.get(passed).seconds() == seconds))) {
            passed++;
        }
        if (passed == 0) {
            return corners.getFirst().volts();
        }
        Corner from = corners.get(passed - 1);
        if (passed == corners.size()) {
            return from.volts();
        }
        Corner to = corners.get(passed);
        return from.volts()
                + (to.volts() - from.volts()) * (seconds - from.seconds()) / (to.seconds() - from.seconds());
    }

    /** The next corner after a time, or infinity. */
    double nextCorner(double seconds) {
        for (int k = 0; k < corners.size(); k++) {
            if (corners.get(k).seconds() > seconds) {
                return corners.get(k).seconds();
            }
        }
        return Double.POSITIVE_INFINITY;
    }
}
