package org.loomproof.workshop.weigh;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.prover.verdict.Verdict;

/**
 * The class of a margin: a claim holds tightly or with room. Only the class counts, so that no coupling wins by a hundredth of
 * a volt. A claim belongs to the lead, or to the lead of the part, that its id names; what names neither is the same in every
 * candidate.
 */
final class Tightness {

    /** Less to spare than this is tight. Common practice, no published source. */
    private static final Map<String, Double> ROOM = Map.of("V", 0.1, "%", 2.0);

    private Tightness() {}

    /** How many claims about leads and their parts hold tightly. */
    static int count(Plan plan, Proof proof) {
        return (int) tight(proof)
                .filter(words -> plan.hookups().stream().anyMatch(hookup -> isAbout(words, hookup)))
                .count();
    }

    /** How many of those are about leads that another plan decides as this one does: it cannot better them. */
    static int countKept(Plan plan, Proof proof, Plan other) {
        List<Hookup> same = plan.hookups().stream()
                .filter(hookup -> isSame(hookup, other, hookup.lead()))
                .toList();
        return (int) tight(proof)
                .filter(words -> same.stream().anyMatch(hookup -> isAbout(words, hookup)))
                .count();
    }

    private static boolean isSame(Hookup hookup, Plan other, LeadId lead) {
        return other.findHookup(lead)
                .filter(o ->
                        o.because().equals(hookup.because()) && o.getClass().equals(hookup.getClass()))
                .isPresent();
    }

    private static Stream<Set<String>> tight(Proof proof) {
        return proof.results().stream()
                .filter(result -> result.verdict() instanceof Verdict.Holds holds && isTight(holds.tightest()))
                .map(ClaimResult::id)
                .map(id -> Arrays.stream(id.split(" ")).collect(Collectors.toSet()));
    }

    private static boolean isTight(Margin margin) {
        return margin.slack() < ROOM.getOrDefault(margin.unit(), 0.0);
    }

    private static boolean isAbout(Set<String> words, Hookup hookup) {
        return words.contains(hookup.lead().value())
                || (hookup instanceof Hookup.Connect connect
                        && connect.parts().stream().anyMatch(part -> words.contains(part.value())));
    }
}
