package org.loomproof.workshop.meter.shock;

import java.util.List;
import java.util.Optional;

/**
 * The up-and-down method of Dixon and Mood (JASA 43, 1948, 109): after a response the next trial is one step weaker, after none
 * one step stronger. Only the rarer of the two outcomes is counted. Formulas as printed by S. Caliskan et al., Frattura ed
 * Integrita Strutturale 58 (2021) 344-364, equations 1 to 4.
 */
public final class UpAndDown {

    /** With so few of the rarer outcome the formulas say nothing. Common practice, no published source. */
    private static final int LEAST_COUNTED = 4;

    private static final double LEAST_RATIO = 0.3;

    /** For steps of one to two deviations. */
    private static final double SPREAD_FACTOR = 1.3;

    private UpAndDown() {}

    /**
     * One trial.
     *
     * @param level steps above the lowest strength, from 0
     * @param responded whether it was noticed
     */
    public record Trial(int level, boolean responded) {}

    /**
     * What a series comes to, on the scale of its levels.
     *
     * @param mean where half of the trials respond
     * @param deviation standard deviation of the threshold
     * @param counted how many trials of the rarer outcome it leans on
     * @param isSpreadSure whether the deviation comes from the data; otherwise it is the least that the step lets be seen
     */
    public record Estimate(double mean, double deviation, int counted, boolean isSpreadSure) {

        /** Standard deviation of the mean, taken as {@code deviation / sqrt(counted)}: close to what the method's authors give. */
        public double meanError() {
            return deviation / Math.sqrt(counted);
        }

        /** Standard deviation of the deviation: larger than that of the mean by a factor of the method's authors (from memory). */
        public double deviationError() {
            return SPREAD_FACTOR * deviation / Math.sqrt(counted);
        }
    }

    /**
     * Estimates mean and deviation.
     *
     * @param lowest strength of level 0
     * @param step from one level to the next, above 0
     * @return nothing where the rarer outcome was met less than four times
     */
    public static Optional<Estimate> estimate(List<Trial> trials, double lowest, double step) {
        if (!(step > 0)) {
            throw new IllegalArgumentException("a step goes up: " + step);
        }
        long responses = trials.stream().filter(Trial::responded).count();
        boolean event = responses <= trials.size() - responses;
        List<Trial> counted =
                trials.stream().filter(t -> t.responded() == event).toList();
        if (counted.size() < LEAST_COUNTED) {
            return Optional.empty();
        }
        int first = counted.stream().mapToInt(Trial::level).min().orElseThrow();
        double f = counted.size();
        double a = counted.stream().mapToDouble(t -> t.level() - first).sum();
        double b = counted.stream()
                .mapToDouble(t -> Math.pow(t.level() - first, 2))
                .sum();
        double ratio = (f * b - a * a) / (f * f);
        boolean isSure = ratio >= LEAST_RATIO;
        return Optional.of(new Estimate(
                lowest + first * step + step * (a / f + (event ? -0.5 : 0.5)),
                isSure ? 1.62 * step * (ratio + 0.029) : 0.53 * step,
                counted.size(),
                isSure));
    }

    /** The level of the next trial: one down after a response, one up after none. */
    public static int next(Trial last) {
        return Math.max(0, last.level() + (last.responded() ? -1 : 1));
    }
}
