package org.loomproof.network.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The coefficients against what they must satisfy: conditions of order and of stiff damping after Hairer and Wanner, Solving
 * Ordinary Differential Equations II, IV.6 (from memory). None of them can be wrong in its fourteenth figure.
 */
class MethodTest {
    private static final double CLOSE = 1e-13;

    private static Method method(int order) {
        return order == 2 ? Method.SECOND_ORDER : Method.FOURTH_ORDER;
    }

    private static double[][] whole(Method method) {
        double[][] all = new double[method.stages()][method.stages()];
        for (int i = 1; i < all.length; i++) {
            System.arraycopy(method.shares[i], 0, all[i], 0, i);
            all[i][i] = method.diagonal;
        }
        return all;
    }

    private static double sum(int count, IntToDoubleFunction of) {
        return IntStream.range(0, count).mapToDouble(of).sum();
    }

    /** By how much an end misses the conditions of all rooted trees up to an order, at most. */
    private static double miss(double[] weights, double[][] a, double[] c, int order) {
        int n = c.length;
        double[] ac = IntStream.range(0, n)
                .mapToDouble(i -> sum(n, j -> a[i][j] * c[j]))
                .toArray();
        double[] misses = {
            sum(n, i -> weights[i]) - 1,
            sum(n, i -> weights[i] * c[i]) - 1.0 / 2,
            sum(n, i -> weights[i] * c[i] * c[i]) - 1.0 / 3,
            sum(n, i -> weights[i] * ac[i]) - 1.0 / 6,
            sum(n, i -> weights[i] * c[i] * c[i] * c[i]) - 1.0 / 4,
            sum(n, i -> weights[i] * c[i] * ac[i]) - 1.0 / 8,
            sum(n, i -> weights[i] * sum(n, j -> a[i][j] * c[j] * c[j])) - 1.0 / 12,
            sum(n, i -> weights[i] * sum(n, j -> a[i][j] * ac[j])) - 1.0 / 24
        };
        int[] upTo = {0, 1, 2, 4, 8};
        return Arrays.stream(misses, 0, upTo[order]).map(Math::abs).max().orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 4})
    void theEndHasItsOrderAndTheStagesTheSecond(int order) {
        Method method = method(order);
        double[][] a = whole(method);
        int n = method.stages();
        for (int i = 0; i < n; i++) {
            int stage = i;
            assertThat(sum(n, j -> a[stage][j])).isCloseTo(method.at[i], within(CLOSE));
            assertThat(sum(n, j -> a[stage][j] * method.at[j]))
                    .isCloseTo(0.5 * method.at[i] * method.at[i], within(CLOSE));
        }
        assertThat(method.at[method.last()]).isEqualTo(1);
        assertThat(miss(a[method.last()], a, method.at, order)).isLessThan(CLOSE);
    }

    /** The end within the method by which the error is told is of the order said, and of no higher one. */
    @ParameterizedTest
    @ValueSource(ints = {2, 4})
    void theErrorIsToldByAnEndOfAnotherOrder(int order) {
        Method method = method(order);
        double[][] a = whole(method);
        double[] other = a[method.last()].clone();
        for (int i = 0; i < other.length; i++) {
            other[i] -= method.error[i];
        }
        // The second order tells its own error by an end of the third, the fourth by one of the third.
        assertThat(miss(other, a, method.at, 3)).isLessThan(CLOSE);
        assertThat(miss(other, a, method.at, 4)).isGreaterThan(1e-4);
    }

    /** R(z) of y' = z y: at most 1 in size along the imaginary axis, and so left of it, and 0 far out. */
    @ParameterizedTest
    @ValueSource(ints = {2, 4})
    void stiffPartsAreDampedToNothing(int order) {
        Method method = method(order);
        for (double y = 0; y < 100; y += 0.01) {
            assertThat(growth(method, 0, y)).as("at %s i", y).isLessThan(1 + 1e-12);
        }
        assertThat(growth(method, -1e9, 0)).isLessThan(1e-7);
        // Near nothing it is the exponential to the order.
        assertThat(growth(method, -0.1, 0)).isCloseTo(Math.exp(-0.1), within(Math.pow(0.1, order + 1)));
    }

    private static double growth(Method method, double real, double imaginary) {
        double[][] a = whole(method);
        double[] re = new double[method.stages()];
        double[] im = new double[method.stages()];
        double downRe = 1 - method.diagonal * real;
        double downIm = -method.diagonal * imaginary;
        double size = downRe * downRe + downIm * downIm;
        re[0] = 1;
        for (int i = 1; i < re.length; i++) {
            int stage = i;
            double sharesRe = sum(i, j -> a[stage][j] * re[j]);
            double sharesIm = sum(i, j -> a[stage][j] * im[j]);
            double upRe = 1 + real * sharesRe - imaginary * sharesIm;
            double upIm = real * sharesIm + imaginary * sharesRe;
            re[i] = (upRe * downRe + upIm * downIm) / size;
            im[i] = (upIm * downRe - upRe * downIm) / size;
        }
        return Math.hypot(re[method.last()], im[method.last()]);
    }

    /** Third order terms that stages of second order are out by, in parts of h^3 y'''. */
    private static double[] stageErrors(Method method) {
        double[][] a = whole(method);
        return IntStream.range(0, method.stages())
                .mapToDouble(i -> sum(method.stages(), j -> a[i][j] * method.at[j] * method.at[j]) / 2
                        - Math.pow(method.at[i], 3) / 6)
                .toArray();
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 4})
    void betweenTheEndsPowersUpToThatOfTheCurveComeBack(int order) {
        Method method = method(order);
        int powers = order == 2 ? 3 : 4;
        double[] errors = stageErrors(method);
        for (double part = 0; part <= 1; part += 0.125) {
            for (int power = 0; power < powers; power++) {
                double sum = 0;
                double ofErrors = 0;
                for (int k = 0; k < method.kept.length; k++) {
                    double weight = method.weightAt(k, part);
                    sum += weight * Math.pow(method.at[method.kept[k]], power);
                    ofErrors += weight * errors[method.kept[k]];
                }
                assertThat(sum).isCloseTo(Math.pow(part, power), within(CLOSE));
                if (order == 4) {
                    assertThat(ofErrors).isCloseTo(0, within(CLOSE));
                }
            }
        }
        double slope = sum(method.kept.length, k -> method.endSlope(k) * method.at[method.kept[k]]);
        assertThat(slope).isCloseTo(1, within(CLOSE));
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 4})
    void aBendLetsNothingSmoothThrough(int order) {
        Method method = method(order);
        int powers = order == 2 ? 2 : 4;
        for (int power = 0; power < powers; power++) {
            int each = power;
            assertThat(sum(method.stages(), i -> method.bend[i] * Math.pow(method.at[i], each)))
                    .isCloseTo(0, within(CLOSE));
        }
        double[] errors = stageErrors(method);
        assertThat(order == 2 ? 0 : sum(method.stages(), i -> method.bend[i] * errors[i]))
                .isCloseTo(0, within(CLOSE));
        assertThat(sum(method.stages(), i -> method.bend[i] * Math.pow(method.at[i], powers)))
                .satisfies(left -> assertThat(Math.abs(left)).isGreaterThan(1e-3));
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 4})
    void guessesAreRightForStraightLines(int order) {
        Method method = method(order);
        for (int stage = 2; stage < method.stages(); stage++) {
            double[] weights = method.guess[stage];
            assertThat(sum(weights.length, i -> weights[i])).isCloseTo(1, within(CLOSE));
            assertThat(sum(weights.length, i -> weights[i] * method.at[i])).isCloseTo(method.at[stage], within(CLOSE));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 4})
    void anIntegralOverAStepIsThatOfTheEnd(int order) {
        Method method = method(order);
        for (int power = 0; power < order; power++) {
            int each = power;
            assertThat(sum(method.kept.length, k -> method.weight(k) * Math.pow(method.at[method.kept[k]], each)))
                    .isCloseTo(1.0 / (power + 1), within(CLOSE));
        }
    }
}
