package org.loomproof.workshop.meter.drain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.loomproof.workshop.meter.evidence.Bell;

/**
 * Through which branch a drain goes: one of those that are known, or another way. What was measured counts by its likelihood; the
 * next one is where an answer is expected to tell most per minute.
 *
 * @param chances each branch with the probability that the drain goes through it
 * @param elsewhere the probability that it goes another way
 * @param next the branch to measure now; empty when all were measured
 * @param bits what that is expected to tell
 */
public record Hunt(List<Chance> chances, double elsewhere, Optional<Branch> next, double bits) {

    /** From here on one is called found. */
    public static final double FOUND = 0.9;

    /** After a fitting what was added is suspected first. Common practice, no published source. */
    private static final double PRIOR_OURS = 0.35;

    private static final double PRIOR_ELSEWHERE = 0.2;

    /** One answer in twenty misleads. Common practice, no published source. */
    private static final double MISLEADS = 0.05;

    private static final int GRID = 20;

    /** A branch. */
    public record Chance(Branch branch, double probability) {}

    public Hunt {
        chances = List.copyOf(chances);
    }

    /** The likeliest way, when it is found. */
    public Optional<Branch> found() {
        return chances.stream()
                .filter(c -> c.probability() >= FOUND)
                .map(Chance::branch)
                .findFirst();
    }

    /**
     * Weighs the branches.
     *
     * @param moreAmps what is drawn beside the sleeping car, above 0
     * @param restingAmps what the sleeping car draws
     */
    static Hunt of(List<Branch> branches, double moreAmps, double restingAmps) {
        double[] weight = new double[branches.size()];
        long ours = branches.stream().filter(Branch::isOurs).count();
        double oursShare = ours == 0 ? 0 : PRIOR_OURS;
        long others = branches.size() - ours;
        double othersShare = others == 0 ? 0 : 1 - PRIOR_ELSEWHERE - oursShare;
        double elsewhere = 1 - oursShare - othersShare;
        for (int k = 0; k < weight.length; k++) {
            Branch branch = branches.get(k);
            double prior = branch.isOurs() ? oursShare / ours : othersShare / others;
            weight[k] = prior * ratio(branch, moreAmps, restingAmps);
        }
        double sum = elsewhere
                + IntStream.range(0, weight.length).mapToDouble(k -> weight[k]).sum();
        List<Chance> chances = IntStream.range(0, weight.length)
                .mapToObj(k -> new Chance(branches.get(k), weight[k] / sum))
                .sorted(Comparator.comparingDouble(Chance::probability).reversed())
                .toList();
        List<Chance> open = new ArrayList<>(
                chances.stream().filter(c -> c.branch().seen().isEmpty()).toList());
        Optional<Chance> next = open.stream()
                .max(Comparator.comparingDouble(
                        c -> told(c.probability()) / c.branch().way().minutes()));
        return new Hunt(
                chances,
                elsewhere / sum,
                next.map(Chance::branch),
                next.map(c -> told(c.probability())).orElse(0.0));
    }

    /** How much likelier what was seen is with the drain in this branch than without; 1 where nothing was seen. */
    private static double ratio(Branch branch, double moreAmps, double restingAmps) {
        return branch.seen()
                .map(seen -> density(seen, moreAmps, restingAmps) / density(seen, 0, restingAmps))
                .orElse(1.0);
    }

    /** The branch's own share of what the sleeping car draws is anything from nothing to all of it; small shares are usual. */
    private static double density(Branch.Seen seen, double moreAmps, double restingAmps) {
        double sum = 0;
        for (int k = 0; k < GRID; k++) {
            double share = Math.pow((k + 0.5) / GRID, 3);
            double amps = moreAmps + share * restingAmps;
            // A log and a branch are not read at the same moment.
            double spread = Math.hypot(seen.errorAmps(), 0.1 * amps + Plateaus.NOTHING_AMPS);
            sum += Bell.density(seen.amps(), amps, spread) / GRID;
        }
        double anything = 1 / (restingAmps + moreAmps + 1);
        return (1 - MISLEADS) * sum + MISLEADS * anything;
    }

    /** Mutual information of where the drain is and one answer, in bits. */
    private static double told(double probability) {
        double yes = probability * (1 - MISLEADS) + (1 - probability) * MISLEADS;
        return entropy(yes) - entropy(MISLEADS);
    }

    private static double entropy(double p) {
        return p <= 0 || p >= 1 ? 0 : -(p * Math.log(p) + (1 - p) * Math.log(1 - p)) / Math.log(2);
    }
}
