package org.loomproof.workshop.prover;

import java.util.List;
import java.util.Set;
import org.loomproof.workshop.prover.damage.Outcome;
import org.loomproof.workshop.prover.damage.Showing;
import org.loomproof.workshop.prover.damage.Sign;
import org.loomproof.workshop.prover.testorder.TestOrder;
import org.loomproof.workshop.prover.verdict.Severity;
import org.loomproof.workshop.words.Phrase;

/**
 * What every single fault and slip comes to, and the tests that notice them.
 *
 * @param results the worst first, then in the order of the plan
 * @param testOrder the tests; its mishaps are in the order of {@code results}
 * @param mayBeNoticed the places of the results that some test shows at typical figures, and none surely
 * @param watch for each test what differs when it notices something
 * @param expected for each test and each of its situations what a vehicle as planned shows of what is looked at
 * @param left mishaps that were not looked at, because the search was stopped
 * @param effort what was looked at
 * @param bounds every limit that was put on the search, in words
 */
public record FaultProof(
        List<MishapResult> results,
        TestOrder testOrder,
        Set<Integer> mayBeNoticed,
        List<List<Sign>> watch,
        List<List<Showing>> expected,
        int left,
        Outcome.Effort effort,
        List<Phrase> bounds) {

    public FaultProof {
        results = List.copyOf(results);
        mayBeNoticed = Set.copyOf(mayBeNoticed);
        watch = watch.stream().map(List::copyOf).toList();
        expected = expected.stream().map(List::copyOf).toList();
        bounds = List.copyOf(bounds);
    }

    /** Whether some test of the order notices the result of that place. */
    public boolean isNoticed(int result) {
        return !testOrder.noticedBy().get(result).isEmpty();
    }

    /** How the result of that place is found by looking, and whether a test may show it though not surely. */
    public Phrase inspection(int result) {
        Phrase inspection = results.get(result).mishap().inspection();
        return mayBeNoticed.contains(result) ? Phrase.of("inspection.not-surely", inspection) : inspection;
    }

    /** How many results are of that severity, and how many of those some test notices. */
    public Coverage coverage(Severity severity) {
        int all = 0;
        int noticed = 0;
        for (int k = 0; k < results.size(); k++) {
            if (results.get(k).severity() == severity) {
                all++;
                noticed += isNoticed(k) ? 1 : 0;
            }
        }
        return new Coverage(all, noticed);
    }

    /** Of all results that touch anything that is claimed. */
    public Coverage coverage() {
        Coverage sum = new Coverage(0, 0);
        for (Severity severity : Severity.values()) {
            sum = severity == Severity.NONE ? sum : sum.and(coverage(severity));
        }
        return sum;
    }

    /** A number of mishaps, and of those that are noticed. */
    public record Coverage(int all, int noticed) {
        Coverage and(Coverage other) {
            return new Coverage(all + other.all, noticed + other.noticed);
        }

        /** Per cent that are noticed; 100 of none. */
        public double percent() {
            return all == 0 ? 100 : 100.0 * noticed / all;
        }
    }
}
