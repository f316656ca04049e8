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
 * Both demands are judged at the unfavourable end of what the mean may be by two of its standard errors.
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
     * @param nextJoules how strong the next blow at this setting should be
     * @param doesIt whether both demands are met
     */
    public record Judged(
            double setting,
            Optional<Estimate> estimate,
            double falseAMonth,
            double noticedShare,
            double nextJoules,
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

    /** Blows of a series that are off the ladder of its steps; they make the estimate worthless. */
    public static Map<Integer, Blow> offTheLadder(List<Blow> blows) {
        Map<Integer, Blow> off = new LinkedHashMap<>();
        Map<Double, Double> first = new TreeMap<>();
        for (int k = 0; k < blows.size(); k++) {
            double x = Math.log10(blows.get(k).joules());
            double from = first.computeIfAbsent(blows.get(k).setting(), s -> x);
            double steps = (x - from) / STEP;
            if (Math.abs(steps - Math.rint(steps)) > OFF_STEP) {
                off.put(k, blows.get(k));
            }
        }
        return off;
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
        double falseAMonth = estimate.map(e -> DAYS_A_MONTH
                        * demand.harmlessADay()
                        * Bell.below(
                                Math.log10(demand.harmlessJoules()), e.mean() - ERRORS * e.meanError(), e.deviation()))
                .orElse(Double.NaN);
        double share = estimate.map(e -> Bell.below(
                        Math.log10(demand.mattersJoules()), e.mean() + ERRORS * e.meanError(), e.deviation()))
                .orElse(Double.NaN);
        boolean doesIt = falseAMonth <= demand.falseAMonth() && share >= demand.noticedShare();
        return new Judged(setting, estimate, falseAMonth, share, Math.pow(10, next), doesIt);
    }
}
