package org.loomproof.workshop.quantity;

import java.util.Optional;
import java.util.stream.IntStream;

/**
 * American wire gauge: gauge 36 is 0.005 inch across, gauge 0000 is 0.46 inch, and each of the 39 steps between has the same
 * ratio (the law of ASTM B258; values against the published table in {@code docs/sources.md}).
 */
public final class WireGauge {

    private static final double GAUGE_36_MILLIMETRES = 0.127;
    private static final double RATIO_OF_39_STEPS = 92;

    /** Two areas this close are one size: gauge and metric sizes lie further apart than this everywhere. */
    private static final double SAME_SIZE = 0.003;

    private static final int THICKEST = -3;
    private static final int FINEST = 40;

    /** Beyond the odd ones, which nobody sells. Common practice, no published source. */
    private static final int STEP_SOLD = 2;

    private WireGauge() {}

    /** The gauge that an area is, such as {@code 18 AWG}; nothing for a metric size. */
    public static Optional<String> name(SquareMillimetres area) {
        return IntStream.rangeClosed(THICKEST, FINEST)
                .filter(gauge -> Math.abs(area(gauge).value() - area.value()) <= SAME_SIZE * area.value())
                .mapToObj(WireGauge::name)
                .findFirst();
    }

    /** The thinnest gauge sold, of the even ones and 1/0 to 4/0, that has at least this area; nothing beyond 4/0. */
    public static Optional<String> noThinnerThan(SquareMillimetres area) {
        return IntStream.rangeClosed(THICKEST, FINEST)
                .map(k -> THICKEST + FINEST - k)
                .filter(gauge -> gauge <= 0 || gauge % STEP_SOLD == 0)
                .filter(gauge -> area(gauge).value() >= area.value())
                .mapToObj(WireGauge::name)
                .findFirst();
    }

    private static String name(int gauge) {
        return (gauge > 0 ? Integer.toString(gauge) : 1 - gauge + "/0") + " AWG";
    }

    /**
     * The cross-section of a solid round conductor.
     *
     * @param gauge the number; 0 for 1/0, −1 for 2/0 and so on down to −3 for 4/0
     */
    public static SquareMillimetres area(int gauge) {
        double diameter = GAUGE_36_MILLIMETRES * Math.pow(RATIO_OF_39_STEPS, (36 - gauge) / 39.0);
        return new SquareMillimetres(Math.PI / 4 * diameter * diameter);
    }
}
