package org.loomproof.workshop.prover.damage;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import org.loomproof.workshop.prover.explore.Ends;
import org.loomproof.workshop.prover.explore.Key;
import org.loomproof.workshop.prover.explore.Sensitivity;
import org.loomproof.workshop.prover.explore.Variations;
import org.loomproof.workshop.wiring.Corner;

/**
 * Whether things that are so by some amount at typical values are so at the ends of ranged figures too, each in one situation: with
 * each figure alone at either end, and with all figures at the ends that are worse for it together.
 *
 * @param variations each figure at either end
 * @param ends the corners to look at
 * @param at by how much the things of these places are so at a corner, in their order; negative where they are not, NaN where nothing
 *     is said
 */
record Lasting(List<Variations.Variation> variations, Ends ends, BiFunction<Corner, List<Integer>, List<Double>> at) {

    private static final Key ANYWHERE = new Key(0, 0, 0);

    /** What each figure does to each thing, by the thing's place. */
    Map<Integer, Sensitivity> sensitivities(List<Double> typical) {
        List<Integer> places = IntStream.range(0, typical.size()).boxed().toList();
        List<List<Double>> moved = variations.stream()
                .map(variation -> at.apply(variation.corner(), places))
                .toList();
        Map<Integer, Sensitivity> all = new HashMap<>();
        for (int place : places) {
            List<Double> own = moved.stream().map(there -> there.get(place)).toList();
            all.put(place, Sensitivity.of(ANYWHERE, typical.get(place), variations, own));
        }
        return all;
    }

    /** The places of the things that are so everywhere. */
    BitSet everywhere(List<Double> typical) {
        BitSet so = new BitSet(typical.size());
        if (typical.isEmpty()) {
            return so;
        }
        Map<Integer, Sensitivity> sensitivities = sensitivities(typical);
        sensitivities.forEach((place, each) ->
                so.set(place, each.effects().stream().noneMatch(effect -> effect.worseSlack() < 0)));
        ends.groups(sensitivities, so.stream().boxed().toList()).forEach((corner, group) -> {
            for (Corner end : ends.of(corner)) {
                List<Double> there = at.apply(end, group);
                IntStream.range(0, group.size())
                        .filter(k -> !(there.get(k) >= 0))
                        .forEach(k -> so.clear(group.get(k)));
            }
        });
        return so;
    }
}
