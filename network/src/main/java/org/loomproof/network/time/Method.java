package org.loomproof.network.time;

/**
 * What a {@link Step} is made of: an implicit Runge-Kutta method whose first stage is the end of the step before, whose last is the
 * end, and whose others all have the same diagonal, so that the companions of a step stand for all of it. Stages are of second
 * order; stiff parts are damped to nothing. Arrays are not to be written to. A test holds all of it against the conditions of
 * order.
 */
final class Method {
    private static final double C = 2 - Math.sqrt(2);
    private static final double K = (-3 * C * C + 4 * C - 2) / (6 * (2 - C));

    /**
     * The trapezoidal rule to an inner point and the second backward difference from there, TR-BDF2 (Bank, Coughran, Fichtner,
     * Grosse, Rose and Smith, 1985; Hosea and Shampine, 1996).
     */
    static final Method SECOND_ORDER = new Method(
            2,
            C / 2,
            new double[] {0, C, 1},
            new double[][] {{}, {C / 2}, {Math.sqrt(2) / 4, Math.sqrt(2) / 4}},
            new double[] {-K / C, K / (C * (1 - C)), -K / (1 - C)},
            new int[] {0, 1, 2},
            new double[][] {
                {1, -(1 + C) / C, 1 / C}, {0, 1 / (C * (1 - C)), -1 / (C * (1 - C))}, {0, -C / (1 - C), 1 / (1 - C)}
            },
            new double[] {C - 1, 1, -C},
            1,
            new double[][] {{}, {1}, {1 - 1 / C, 1 / C}},
            2);

    /**
     * ESDIRK4(3)6L[2]SA, the implicit half of a pair by Kennedy and Carpenter (Applied Numerical Mathematics 44, 2003, and
     * NASA/TM-2016-219173; coefficients from memory). Its second stage has no weight in the end and is not kept. Between its ends
     * a step is the cubic that is exact for cubics in time and lets through nothing of the stages' own error, which is of third
     * order in the step and not the same in each; its bend is what neither lets through.
     */
    static final Method FOURTH_ORDER = new Method(
            3,
            0.25,
            new double[] {0, 0.5, 83.0 / 250, 31.0 / 50, 17.0 / 20, 1},
            new double[][] {
                {},
                {0.25},
                {8611.0 / 62500, -1743.0 / 31250},
                {5012029.0 / 34652500, -654441.0 / 2922500, 174375.0 / 388108},
                {15267082809.0 / 155376265600.0, -71443401.0 / 120774400, 730878875.0 / 902184768, 2285395.0 / 8070912},
                {82889.0 / 524892, 0, 15625.0 / 83664, 69875.0 / 102672, -2260.0 / 8211}
            },
            new double[] {
                82889.0 / 524892 - 4586570599.0 / 29645900160.0,
                0,
                15625.0 / 83664 - 178811875.0 / 945068544,
                69875.0 / 102672 - 814220225.0 / 1159782912,
                -2260.0 / 8211 + 3700637.0 / 11593932,
                0.25 - 61727.0 / 225920
            },
            new int[] {0, 2, 3, 4, 5},
            new double[][] {
                {1, -5.810803128576366, 10.327404927669154, -5.516601799092788},
                {0, 10.689821779780859, -29.82835805305457, 19.138536273273708},
                {0, -6.976570162894517, 29.096494032395565, -22.11992386950105},
                {0, 2.140658943884459, -9.724863203593458, 7.584204259708999},
                {0, -0.04310743219443466, 0.129322296583304, 0.9137851356111307}
            },
            new double[] {
                0.12016993478994671,
                1,
                -0.8462157453342782,
                0.17925071501251272,
                -0.8200872574093576,
                0.3668823529411765
            },
            0.5,
            new double[][] {
                {},
                {1},
                {0.336, 0.664},
                {0.20819277108433734, 2.125714285714286, -1.333907056798623},
                {0.5787990672366887, 0, -2.0446368808567605, 2.465837813620072},
                {-0.21762191079307744, 0, 1.1508388767424913, -2.439808321645629, 2.506591355696215}
            },
            6);

    /** From this tolerance on the second order takes less work: few long steps, each of two solutions rather than five. */
    private static final double SECOND_ORDER_FROM = 4e-3;

    /** The order of the end with which the error is told: that of the method, or of the one within it if that is lower. */
    final int order;

    final double diagonal;

    /** Where in the step each stage lies. */
    final double[] at;

    /** Of each stage, the shares of the rates of the stages before it; the diagonal comes on top. */
    final double[][] shares;

    /** Of each rate in the error of a step, in parts of its length. */
    final double[] error;

    /** The stages whose voltages and currents are kept: the first, the last, and all with a weight in the last. */
    final int[] kept;

    /** Weight of each kept stage in the coefficients of the curve between the ends, from the constant on. */
    final double[][] curve;

    /** Weights of all stages in the bend of a voltage: for a straight enough course they let nothing through. */
    final double[] bend;

    /** How large that may be, as a part of the largest voltage so far, where the tolerance to its power is 1. */
    final double bendPart;

    /** From the stages before it, where each is thought to lie; the second by its slope as well. */
    final double[][] guess;

    /** The first step after a jump, in parts of the time of the fastest store, where the tolerance to its power is 1. */
    final double firstPart;

    private Method(
            int order,
            double diagonal,
            double[] at,
            double[][] shares,
            double[] error,
            int[] kept,
            double[][] curve,
            double[] bend,
            double bendPart,
            double[][] guess,
            double firstPart) {
        this.order = order;
        this.diagonal = diagonal;
        this.at = at;
        this.shares = shares;
        this.error = error;
        this.kept = kept;
        this.curve = curve;
        this.bend = bend;
        this.bendPart = bendPart;
        this.guess = guess;
        this.firstPart = firstPart;
    }

    /** The one that takes less work. */
    static Method of(double tolerance) {
        return tolerance >= SECOND_ORDER_FROM ? SECOND_ORDER : FOURTH_ORDER;
    }

    int stages() {
        return at.length;
    }

    int last() {
        return at.length - 1;
    }

    /** The error of a step grows with this power of its length. */
    int errorPower() {
        return order + 1;
    }

    /** Weight of a kept stage at a part of the step. */
    double weightAt(int each, double part) {
        double sum = 0;
        for (int power = curve[each].length - 1; power >= 0; power--) {
            sum = sum * part + curve[each][power];
        }
        return sum;
    }

    /** Weight of a kept stage in the integral over a step, as the end itself has it. */
    double weight(int each) {
        return kept[each] == last() ? diagonal : shares[last()][kept[each]];
    }

    /** Weight of a kept stage in the slope at the end, in parts of one over the length. */
    double endSlope(int each) {
        double sum = 0;
        for (int power = 1; power < curve[each].length; power++) {
            sum += power * curve[each][power];
        }
        return sum;
    }
}
