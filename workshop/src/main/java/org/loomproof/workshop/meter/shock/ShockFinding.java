package org.loomproof.workshop.meter.shock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.meter.shock.ShockSetting.Judged;

/**
 * How the setting of a shock sensor stands.
 *
 * @param settings each that blows were given at, the least sensitive first
 * @param best the one to leave it at; empty while none is known to do what is asked
 * @param advice what to do now
 * @param setting the one that the advice speaks of
 * @param next the next blow there; empty when nothing is left to try
 * @param ladder the blows of the plan with the mass of the blow that matters, the weakest first: one step each from under the
 *     harmless knock to above the blow that matters
 */
public record ShockFinding(
        List<Judged> settings,
        Optional<Judged> best,
        Advice advice,
        Optional<Double> setting,
        Optional<Knock> next,
        List<Knock> ladder) {

    /** Blows of the rarer outcome after which another setting is worth more than another blow. No published source. */
    private static final int ENOUGH_COUNTED = 8;

    private static final double HALF_STEP = Math.pow(10, ShockSetting.STEP / 2);

    /** What to do now. */
    public enum Advice {
        /** Nothing was tried: a first blow, at a setting in the middle. */
        BEGIN,
        /** More blows at that setting. */
        GO_ON,
        /** A setting between two that were tried. */
        BETWEEN,
        /** More sensitive than any that was tried. */
        MORE_SENSITIVE,
        /** Less sensitive than any that was tried. */
        LESS_SENSITIVE,
        /** Leave it at the best one. */
        LEAVE,
        /** The sensor's answers scatter so widely that no setting does what is asked. */
        NONE_WILL_DO
    }

    public ShockFinding {
        settings = List.copyOf(settings);
        ladder = List.copyOf(ladder);
    }

    /** What a series comes to. */
    public static ShockFinding of(Series series, Wanted wanted) {
        Demand demand = series.demand(wanted);
        List<Judged> settings = ShockSetting.judge(series.blows(), demand);
        Optional<Judged> best = ShockSetting.best(settings);
        List<Knock> ladder = ladder(series.matters(), demand);
        Choice choice = choice(series, settings, ladder, demand);
        return new ShockFinding(settings, best, choice.advice(), choice.setting(), choice.next(), ladder);
    }

    private record Choice(Advice advice, Optional<Double> setting, Optional<Knock> next) {}

    private static Choice choice(Series series, List<Judged> settings, List<Knock> ladder, Demand demand) {
        Knock first = series.matters().bringing(demand.middleJoules());
        if (series.blows().isEmpty()) {
            return new Choice(Advice.BEGIN, Optional.empty(), Optional.of(first));
        }
        Optional<Judged> best = ShockSetting.best(settings);
        if (best.isPresent()) {
            return new Choice(Advice.LEAVE, best.map(Judged::setting), Optional.empty());
        }
        double last = series.blows().getLast().setting();
        Judged at =
                settings.stream().filter(s -> s.setting() == last).findFirst().orElseThrow();
        double next = at.next().joules();
        if (next > ladder.getLast().joules() * HALF_STEP) {
            return new Choice(Advice.MORE_SENSITIVE, Optional.of(last), Optional.of(first));
        }
        if (next < ladder.getFirst().joules() / HALF_STEP) {
            return new Choice(Advice.LESS_SENSITIVE, Optional.of(last), Optional.of(first));
        }
        if (counted(at) < ENOUGH_COUNTED) {
            return new Choice(Advice.GO_ON, Optional.of(last), Optional.of(at.next()));
        }
        return elsewhere(
                settings.stream().filter(s -> counted(s) >= ENOUGH_COUNTED).toList(), first, demand);
    }

    private static int counted(Judged judged) {
        return judged.estimate().map(UpAndDown.Estimate::counted).orElse(0);
    }

    /** By the middle between the two blows: where a setting notices half of those, both demands have most to spare. */
    private static Choice elsewhere(List<Judged> known, Knock first, Demand demand) {
        Optional<Judged> promising = known.stream()
                .filter(s -> ShockSetting.meets(
                        mean(s), 0, s.estimate().orElseThrow().deviation(), demand))
                .findFirst();
        if (promising.isPresent()) {
            return new Choice(Advice.GO_ON, promising.map(Judged::setting), promising.map(Judged::next));
        }
        if (known.stream().anyMatch(s -> isTooWide(s, demand))) {
            return new Choice(Advice.NONE_WILL_DO, Optional.empty(), Optional.empty());
        }
        double middle = Math.log10(demand.middleJoules());
        for (int k = 0; k + 1 < known.size(); k++) {
            double duller = mean(known.get(k));
            double keener = mean(known.get(k + 1));
            if (duller >= middle && middle >= keener && duller > keener) {
                double share = (duller - middle) / (duller - keener);
                double from = known.get(k).setting();
                double between = from + share * (known.get(k + 1).setting() - from);
                return new Choice(Advice.BETWEEN, Optional.of(between), Optional.of(first));
            }
        }
        boolean allDull = known.stream().allMatch(s -> mean(s) > middle);
        Judged outermost = allDull ? known.getLast() : known.getFirst();
        return new Choice(
                allDull ? Advice.MORE_SENSITIVE : Advice.LESS_SENSITIVE,
                Optional.of(outermost.setting()),
                Optional.of(first));
    }

    /** Whether even a setting right in the middle would break a demand with such a spread. */
    private static boolean isTooWide(Judged judged, Demand demand) {
        double spread = judged.estimate().orElseThrow().deviation();
        return !ShockSetting.meets(Math.log10(demand.middleJoules()), 0, spread, demand);
    }

    private static double mean(Judged judged) {
        return judged.estimate().orElseThrow().mean();
    }

    private static List<Knock> ladder(Knock mass, Demand demand) {
        double middle = Math.log10(demand.middleJoules());
        int each = (int) Math.ceil((Math.log10(demand.mattersJoules()) - middle) / ShockSetting.STEP) + 1;
        List<Knock> ladder = new ArrayList<>();
        for (int k = -each; k <= each; k++) {
            ladder.add(mass.bringing(Math.pow(10, middle + k * ShockSetting.STEP)));
        }
        return ladder;
    }
}
