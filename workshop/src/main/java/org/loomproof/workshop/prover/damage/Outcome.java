package org.loomproof.workshop.prover.damage;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/**
 * What a damage comes to.
 *
 * @param breaks the cases it breaks that hold as planned
 * @param noticed for each watched situation, by its place, the signs that surely differ there
 * @param elsewhere a situation that is not watched and shows it, with the fewest steps
 * @param opened the fuses that open in some situation
 * @param trouble what could not be decided, in words
 * @param effort what was looked at
 */
public record Outcome(
        List<Break> breaks,
        Map<Integer, BitSet> noticed,
        Optional<Elsewhere> elsewhere,
        Set<PartId> opened,
        List<Phrase> trouble,
        Effort effort) {

    /** A situation with the signs that surely differ in it. */
    public record Elsewhere(Situation situation, BitSet signs, int steps) {}

    /** How many situations there are, how many of them had to be solved with the damage, and operating points asked for. */
    public record Effort(long situations, long walked, long solves) {
        public Effort and(Effort other) {
            return new Effort(situations + other.situations, walked + other.walked, solves + other.solves);
        }
    }

    static final Outcome NOTHING =
            new Outcome(List.of(), Map.of(), Optional.empty(), Set.of(), List.of(), new Effort(0, 0, 0));

    /** Both together: a damage that reaches two areas. */
    Outcome and(Outcome other) {
        List<Break> allBreaks = new ArrayList<>(breaks);
        allBreaks.addAll(other.breaks);
        Map<Integer, BitSet> allNoticed = new LinkedHashMap<>(noticed);
        other.noticed.forEach((at, signs) -> allNoticed.merge(at, signs, Outcome::union));
        Set<PartId> allOpened = new LinkedHashSet<>(opened);
        allOpened.addAll(other.opened);
        List<Phrase> allTrouble = new ArrayList<>(trouble);
        allTrouble.addAll(other.trouble);
        Optional<Elsewhere> sooner = elsewhere.isPresent()
                        && (other.elsewhere.isEmpty()
                                || elsewhere.get().steps()
                                        <= other.elsewhere.get().steps())
                ? elsewhere
                : other.elsewhere;
        return new Outcome(allBreaks, allNoticed, sooner, allOpened, allTrouble, effort.and(other.effort));
    }

    private static BitSet union(BitSet one, BitSet other) {
        BitSet both = (BitSet) one.clone();
        both.or(other);
        return both;
    }
}
