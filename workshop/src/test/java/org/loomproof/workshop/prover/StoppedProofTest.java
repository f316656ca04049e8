package org.loomproof.workshop.prover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.fixture.Altered;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.prover.verdict.Verdict;

/** A proof that is stopped tells what was decided until then, and says of the rest that it is open. */
class StoppedProofTest {

    private static Map<String, Verdict> verdicts(Proof proof) {
        Map<String, Verdict> verdicts = new LinkedHashMap<>();
        proof.results().forEach(result -> verdicts.put(result.id(), result.verdict()));
        return verdicts;
    }

    private static Proof stoppedAfter(Jobs.Job job, int questions) {
        AtomicInteger left = new AtomicInteger(questions);
        return Prover.prove(job.brief(), job.plan(), () -> left.getAndDecrement() <= 0);
    }

    @Test
    void whereverItIsStoppedNothingIsSaidThatTheWholeProofDoesNotSay() {
        Jobs.Job broken = Jobs.vanJob();
        broken = broken.with(Altered.withoutWire(broken.plan(), "W6"));
        for (Jobs.Job job : List.of(Jobs.simple(), Jobs.vanJob(), broken)) {
            Map<String, Verdict> whole = verdicts(Prover.prove(job.brief(), job.plan()));
            for (int questions : List.of(0, 1, 10, 40, 100, 200, 100_000)) {
                Proof stopped = stoppedAfter(job, questions);
                assertThat(verdicts(stopped).keySet()).containsAll(whole.keySet());
                for (ClaimResult result : stopped.results()) {
                    switch (result.verdict()) {
                        case Verdict.Holds holds ->
                            assertThat(whole.get(result.id())).isEqualTo(holds);
                        case Verdict.Broken shown ->
                            assertThat(whole.get(result.id())).isInstanceOf(Verdict.Broken.class);
                        case Verdict.Declared declared ->
                            assertThat(whole.get(result.id())).isEqualTo(declared);
                        case Verdict.Open open -> {}
                    }
                }
            }
            assertThat(verdicts(stoppedAfter(job, 100_000))).isEqualTo(whole);
        }
    }

    @Test
    void whatWasNotLookedAtIsOpenAndTheProofSaysThatItWasStopped() {
        Proof stopped = stoppedAfter(Jobs.simple(), 0);
        assertThat(stopped.results())
                .filteredOn(result -> result.verdict() instanceof Verdict.Open open
                        && open.because().key().equals("open.stopped"))
                .isNotEmpty();
        assertThat(stopped.bounds()).extracting(bound -> bound.key()).contains("bound.stopped");
        assertThat(Prover.prove(Jobs.simple().brief(), Jobs.simple().plan()).bounds())
                .extracting(bound -> bound.key())
                .doesNotContain("bound.stopped");
    }
}
