package org.loomproof.workshop.prover.explore;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.RangedFigure;
import org.loomproof.workshop.wiring.Warmth;

/**
 * How the slack of one case moves with each ranged figure, one at a time, at one situation.
 *
 * @param key the situation
 * @param slack with every figure at its typical value
 * @param effects of the figures that move it
 */
public record Sensitivity(Key key, double slack, List<Effect> effects) {

    /**
     * A figure that moves the slack by less than this share of it is taken to leave it alone: a hundred such figures together
     * cannot use it up.
     */
    public static final double NOTHING_SHARE = 0.005;

    /**
     * What one figure does.
     *
     * @param worse the end of its range with the lesser slack
     * @param worseSlack the slack there
     */
    public record Effect(RangedFigure figure, Corner.Taken worse, double worseSlack) {}

    public Sensitivity {
        effects = List.copyOf(effects);
    }

    /** Collects the effects of variations on a case, given the slack each leaves. NaN means it no longer says anything. */
    public static Sensitivity of(Key key, double slack, List<Variations.Variation> variations, List<Double> slacks) {
        List<Effect> effects = new ArrayList<>();
        for (int k = 0; k < variations.size(); k++) {
            RangedFigure figure = variations.get(k).figure();
            double moved = slacks.get(k);
            if (Double.isNaN(moved) || Math.abs(moved - slack) <= NOTHING_SHARE * Math.abs(slack)) {
                continue;
            }
            Effect effect = new Effect(figure, variations.get(k).taken(), moved);
            int known = indexOf(effects, figure);
            if (known < 0) {
                effects.add(effect);
            } else if (moved < effects.get(known).worseSlack()) {
                effects.set(known, effect);
            }
        }
        return new Sensitivity(key, slack, effects);
    }

    private static int indexOf(List<Effect> effects, RangedFigure figure) {
        for (int k = 0; k < effects.size(); k++) {
            if (effects.get(k).figure().key().equals(figure.key())) {
                return k;
            }
        }
        return -1;
    }

    /** The figures that can lessen the slack, the strongest first. */
    public List<Effect> harmful() {
        return effects.stream()
                .filter(e -> e.worseSlack() < slack)
                .sorted(Comparator.comparingDouble(Effect::worseSlack))
                .toList();
    }

    /** The same without what the car's warmth does. */
    public Sensitivity atAnyWarmth() {
        return new Sensitivity(
                key,
                slack,
                effects.stream()
                        .filter(e -> !e.figure().key().equals(Warmth.KEY))
                        .toList());
    }

    /** All those figures at their worse ends together. */
    public Corner worstCorner() {
        return corner(harmful());
    }

    /** Whether another corner may be taken for the worst one: it differs only in figures that leave the slack alone. */
    boolean bears(Corner other) {
        return effects.stream().allMatch(effect -> {
            String key = effect.figure().key();
            return worstCorner().taken(key) == other.taken(key);
        });
    }

    static Corner corner(List<Effect> effects) {
        Corner corner = Corner.TYPICAL;
        for (Effect effect : effects) {
            corner = corner.with(effect.figure().key(), effect.worse());
        }
        return corner;
    }
}
