package org.loomproof.workshop.prover.damage;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/**
 * What a damage comes to.
 *
 * @param breaks the cases it breaks that hold as planned
 * @param noticed for each watched situation, by its place, the signs that surely differ there, wherever it was looked at
 * @param typically the same where only typical values were looked at
 * @param elsewhere a situation that is not watched and shows it, with the fewest steps
 * @param opened the fuses that open in some situation
 * @param trouble what could not be decided, in words
 * @param effort what was looked at
 */
public record Outcome(
        List<Break> breaks,
        Map<Integer, BitSet> noticed,
        Map<Integer, BitSet> typically,
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

        /** The same situations looked at once more. */
        Effort alsoAt(Effort ends) {
            return new Effort(situations, walked + ends.walked, solves + ends.solves);
        }
    }

    static final Outcome NOTHING =
            new Outcome(List.of(), Map.of(), Map.of(), Optional.empty(), Set.of(), List.of(), new Effort(0, 0, 0));

    /** Both together: a damage that reaches two areas. */
    Outcome and(Outcome other) {
        List<Break> allBreaks = new ArrayList<>(breaks);
        allBreaks.addAll(other.breaks);
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
        return new Outcome(
                allBreaks,
                union(noticed, other.noticed),
                union(typically, other.typically),
                sooner,
                allOpened,
                allTrouble,
                effort.and(other.effort));
    }

    /** The same with breaks of other cases sure no longer. */
    Outcome sure(Predicate<String> claims) {
        return new Outcome(
                breaks.stream()
                        .map(each -> claims.test(each.claim()) ? each : each.unsure())
                        .toList(),
                noticed,
                typically,
                elsewhere,
                opened,
                trouble,
                effort);
    }

    /** This, and what the same damage comes to elsewhere: the worst of both. What is to be seen is that of this one. */
    Outcome orAtEnds(Outcome ends) {
        Map<String, Break> all = new LinkedHashMap<>();
        breaks.forEach(each -> all.put(each.claim(), each));
        ends.breaks.forEach(each -> all.merge(each.claim(), each, Break::or));
        Set<PartId> allOpened = new LinkedHashSet<>(opened);
        allOpened.addAll(ends.opened);
        Set<Phrase> allTrouble = new LinkedHashSet<>(trouble);
        allTrouble.addAll(ends.trouble);
        return new Outcome(
                List.copyOf(all.values()),
                noticed,
                typically,
                elsewhere,
                allOpened,
                List.copyOf(allTrouble),
                effort.alsoAt(ends.effort));
    }

    /** The same with less to be seen. */
    Outcome noticing(Map<Integer, BitSet> surely) {
        return new Outcome(breaks, surely, typically, elsewhere, opened, trouble, effort);
    }

    private static Map<Integer, BitSet> union(Map<Integer, BitSet> one, Map<Integer, BitSet> other) {
        Map<Integer, BitSet> both = new LinkedHashMap<>(one);
        other.forEach((at, signs) -> both.merge(at, signs, Outcome::union));
        return both;
    }

    private static BitSet union(BitSet one, BitSet other) {
        BitSet both = (BitSet) one.clone();
        both.or(other);
        return both;
    }
}
