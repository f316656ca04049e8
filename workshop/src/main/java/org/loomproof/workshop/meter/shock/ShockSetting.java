package org.loomproof.workshop.meter.shock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.loomproof.workshop.meter.evidence.Bell;
import org.loomproof.workshop.meter.shock.UpAndDown.Estimate;
import org.loomproof.workshop.meter.shock.UpAndDown.Trial;

/**
 * What each setting of a shock sensor was found to do, and which of them does what is demanded.
 *
 * <p>Strengths go by the logarithm of their joules, in equal steps: a blow half as strong is as far off as one twice as strong.
 * Both demands are judged at the unfavourable end of what mean and spread may be by two of their standard errors.
 */
public final class ShockSetting {

    /** From one blow to the next: √2 in strength. Common practice, no published source. */
    public static final double STEP = Math.log10(2) / 2;

    private static final double DAYS_A_MONTH = 30;
    private static final double ERRORS = 2;

    /** Heights measured with a folding rule are off by this share of a step at most. */
    private static final double OFF_STEP = 0.25;

    private ShockSetting() {}

    /**
     * One setting.
     *
     * @param setting of the sensor
     * @param estimate in log10 of joules; empty with too few blows
     * @param falseAMonth false alarms a month at the worst; NaN without an estimate
     * @param noticedShare of the blows that matter, at the worst; NaN without an estimate
     * @param next the next blow at this setting, with the mass of the last
     * @param doesIt whether both demands are met
     */
    public record Judged(
            double setting,
            Optional<Estimate> estimate,
            double falseAMonth,
            double noticedShare,
            Knock next,
            boolean doesIt) {

        /** The strength that is noticed half of the time, in joules; empty with too few blows. */
        public Optional<Double> halfJoules() {
            return estimate.map(e -> Math.pow(10, e.mean()));
        }
    }

    /** Every setting, the least sensitive first. */
    public static List<Judged> judge(List<Blow> blows, Demand demand) {
        Map<Double, List<Blow>> bySetting = new TreeMap<>();
        for (Blow blow : blows) {
            bySetting.computeIfAbsent(blow.setting(), s -> new ArrayList<>()).add(blow);
        }
        return bySetting.entrySet().stream()
                .map(each -> judge(each.getKey(), each.getValue(), demand))
                .toList();
    }

    /** Of those that do what is demanded the one that notices most surely; empty when none does. */
    public static Optional<Judged> best(List<Judged> settings) {
        return settings.stream().filter(Judged::doesIt).max(Comparator.comparingDouble(Judged::noticedShare));
    }

    /**
     * Blows that are not where the method wants them: one step weaker than the blow before at that setting when that one was
     * noticed, one stronger when not. They make the estimate worthless.
     *
     * @return the number of each in the list, from 0, with the joules it should have brought
     */
    public static Map<Integer, Double> offTheMethod(List<Blow> blows) {
        Map<Integer, Double> off = new LinkedHashMap<>();
        Map<Double, Ladder> ladders = new TreeMap<>();
        for (int k = 0; k < blows.size(); k++) {
            Blow blow = blows.get(k);
            double x = Math.log10(blow.joules());
            Ladder before = ladders.get(blow.setting());
            double from = before == null ? x : before.from();
            double steps = (x - from) / STEP;
            long wanted = before == null ? 0 : before.next();
            if (Math.abs(steps - wanted) > OFF_STEP) {
                off.put(k, Math.pow(10, from + wanted * STEP));
            }
            ladders.put(blow.setting(), new Ladder(from, Math.round(steps), blow.noticed()));
        }
        return off;
    }

    /** Where a series stands: the strength of its first blow, how many steps above it the last one was, and what it did. */
    private record Ladder(double from, long level, boolean noticed) {
        long next() {
            return level + (noticed ? -1 : 1);
        }
    }

    private static Judged judge(double setting, List<Blow> blows, Demand demand) {
        double lowest = blows.stream()
                .mapToDouble(blow -> Math.log10(blow.joules()))
                .min()
                .orElseThrow();
        List<Trial> trials = blows.stream()
                .map(blow -> new Trial((int) Math.rint((Math.log10(blow.joules()) - lowest) / STEP), blow.noticed()))
                .toList();
        Optional<Estimate> estimate = UpAndDown.estimate(trials, lowest, STEP);
        Trial last = trials.getLast();
        double next = lowest + STEP * (last.level() + (last.responded() ? -1 : 1));
        return new Judged(
                setting,
                estimate,
                estimate.map(e -> falseAMonth(e.mean() - ERRORS * e.meanError(), widest(e), demand))
                        .orElse(Double.NaN),
                estimate.map(e -> noticedShare(e.mean() + ERRORS * e.meanError(), widest(e), demand))
                        .orElse(Double.NaN),
                blows.getLast().knock().bringing(Math.pow(10, next)),
                estimate.filter(e -> meets(e.mean(), ERRORS * e.meanError(), widest(e), demand))
                        .isPresent());
    }

    private static double widest(Estimate estimate) {
        return estimate.deviation() + ERRORS * estimate.deviationError();
    }

    /**
     * Whether both demands are met wherever the mean is within an error of what it was found to be.
     *
     * @param mean log10 of the joules that are noticed half of the time
     * @param error in the same unit, 0 or more
     * @param deviation in the same unit, above 0
     */
    static boolean meets(double mean, double error, double deviation, Demand demand) {
        return falseAMonth(mean - error, deviation, demand) <= demand.wanted().falseAMonth()
                && noticedShare(mean + error, deviation, demand)
                        >= demand.wanted().noticedShare();
    }

    private static double falseAMonth(double mean, double deviation, Demand demand) {
        return DAYS_A_MONTH
                * demand.wanted().harmlessADay()
                * Bell.below(Math.log10(demand.harmlessJoules()), mean, deviation);
    }

    private static double noticedShare(double mean, double deviation, Demand demand) {
        return Bell.below(Math.log10(demand.mattersJoules()), mean, deviation);
    }
}
