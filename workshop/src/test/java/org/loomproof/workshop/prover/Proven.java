package org.loomproof.workshop.prover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.api.Assertions;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.prover.verdict.Witness;
import org.loomproof.workshop.words.Messages;

/** A proof to be asked about in a test. */
record Proven(Proof proof) {

    static Proven proven(Jobs.Job job) {
        return new Proven(Prover.prove(job.brief(), job.plan()));
    }

    /** Every result holds. */
    Proven holdsThroughout() {
        assertThat(notHolding()).as(ProofText.notHolding(proof)).isEmpty();
        return this;
    }

    /** The ids of the results that do not hold, in their order. */
    List<String> notHolding() {
        return proof.results().stream()
                .filter(r -> !(r.verdict() instanceof Verdict.Holds))
                .map(ClaimResult::id)
                .toList();
    }

    Verdict verdict(String id) {
        return proof.results().stream()
                .filter(r -> r.id().equals(id))
                .findFirst()
                .map(ClaimResult::verdict)
                .orElseGet(() -> Assertions.fail("no result " + id + " in\n" + ProofText.of(proof)));
    }

    Verdict.Broken broken(String id) {
        return verdict(id) instanceof Verdict.Broken broken
                ? broken
                : Assertions.fail(id + " is not broken:\n" + ProofText.of(proof));
    }

    Verdict.Holds holds(String id) {
        return verdict(id) instanceof Verdict.Holds holds
                ? holds
                : Assertions.fail(id + " does not hold:\n" + ProofText.notHolding(proof));
    }

    Verdict.Open open(String id) {
        return verdict(id) instanceof Verdict.Open open
                ? open
                : Assertions.fail(id + " is not open:\n" + ProofText.of(proof));
    }

    /** The steps of a broken result's witness, in English. */
    List<String> steps(String id) {
        Witness witness = broken(id).witness();
        return witness.steps().stream().map(Messages.english()::text).toList();
    }
}
