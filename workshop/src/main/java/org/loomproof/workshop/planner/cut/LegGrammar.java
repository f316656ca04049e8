package org.loomproof.workshop.planner.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.workshop.planner.cut.CutWire.Hand;
import org.loomproof.workshop.planner.grammar.Enumeration;
import org.loomproof.workshop.planner.grammar.LeftOut;

/**
 * Goes through every word for a load out of the box that turns either way, with the grammar of cut wires. To what a leg leads while
 * nobody works it is one choice more: the body, the fused supply or nothing.
 */
public final class LegGrammar {

    /** What two sources that work in turn want of the first leg; of the second they want it the other way round. */
    private static final List<Given> WANTED = List.of(Given.HIGH, Given.LOW);

    /** A load has two legs. */
    private static final int LEGS = 2;

    private LegGrammar() {}

    /**
     * All words for two sources, fewest parts first and at rest at the body before at the supply.
     *
     * @param outputs what works the relays
     * @param besideMotors whether a leg might lead to a leg of the car's own motors besides
     */
    public static Enumeration<LegWord> of(List<Cuts.Output> outputs, boolean besideMotors) {
        long each = CutGrammar.count(LEGS, outputs.size());
        long pairs = 0;
        Map<LeftOut, Long> leftOut = new EnumMap<>(LeftOut.class);
        List<LegWord> words = new ArrayList<>();
        for (Given first : Given.values()) {
            for (Given second : Given.values()) {
                pairs++;
                List<Given> rests = List.of(first, second);
                Optional<LeftOut> reason = reason(rests);
                if (reason.isPresent()) {
                    leftOut.merge(reason.get(), each, Long::sum);
                } else {
                    Enumeration<CutWord> found = CutGrammar.of(new Cuts(wires(rests), outputs));
                    found.leftOut().forEach((why, many) -> leftOut.merge(why, many, Long::sum));
                    found.words().forEach(word -> words.add(new LegWord(rests, word)));
                }
            }
        }
        if (besideMotors) {
            // Whatever lies in the other leg, the car's own switch would carry the added load, and what it bears no
            // sheet says.
            long onMotors = (long) (Given.values().length + 1) * (Given.values().length + 1) - pairs;
            leftOut.merge(LeftOut.CURRENT, onMotors * each, Long::sum);
            pairs += onMotors;
        }
        words.sort(Comparator.comparingInt((LegWord word) -> word.word().parts())
                .thenComparing(word -> word.rests().getFirst())
                .thenComparing(LegWord::toString));
        return new Enumeration<>(pairs * each, leftOut, words);
    }

    /** What is said of all words with legs that lead there. */
    private static Optional<LeftOut> reason(List<Given> rests) {
        if (rests.contains(Given.NOTHING)) {
            // A leg that leads nowhere wants both poles given; one that leads to a pole wants the other alone.
            return Optional.of(LeftOut.SAME_WITH_FEWER);
        }
        return rests.getFirst() == rests.getLast() ? Optional.empty() : Optional.of(LeftOut.WORKS_AT_REST);
    }

    private static List<CutWire> wires(List<Given> rests) {
        return List.of(
                new CutWire(rests.getFirst(), Hand.NONE, WANTED),
                new CutWire(rests.getLast(), Hand.NONE, WANTED.reversed()));
    }
}
