package org.loomproof.workshop.prover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.assertj.core.api.Assertions;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.prover.damage.Break;
import org.loomproof.workshop.prover.testorder.HandTest;
import org.loomproof.workshop.words.Messages;

/** The faults and slips of a job, to be asked about in a test; those of a job are tried once. */
public record Mishaps(FaultProof proof) {

    private static final Map<Jobs.Job, Mishaps> TRIED = new ConcurrentHashMap<>();

    public static Mishaps of(Jobs.Job job) {
        return TRIED.computeIfAbsent(
                job, one -> new Mishaps(FaultProver.prove(one.brief(), one.plan(), FaultWatch.PATIENT)));
    }

    MishapResult result(String id) {
        return proof.results().get(place(id));
    }

    private int place(String id) {
        for (int k = 0; k < proof.results().size(); k++) {
            if (proof.results().get(k).mishap().id().equals(id)) {
                return k;
            }
        }
        return Assertions.fail("no mishap " + id + " among " + ids());
    }

    List<String> ids() {
        return proof.results().stream().map(r -> r.mishap().id()).toList();
    }

    List<String> broken(String id) {
        return result(id).breaks().stream().map(Break::claim).toList();
    }

    List<String> opens(String id) {
        return result(id).opens().stream().map(Messages.english()::text).toList();
    }

    /** The steps that show a broken claim, in English. */
    List<String> steps(String id, String claim) {
        return result(id).breaks().stream()
                .filter(b -> b.claim().equals(claim))
                .findFirst()
                .map(b -> b.witness().steps().stream()
                        .map(Messages.english()::text)
                        .toList())
                .orElseGet(() -> Assertions.fail(id + " does not break " + claim + " but " + broken(id)));
    }

    /** The tests that notice it. */
    List<String> noticedBy(String id) {
        List<HandTest> tests = proof.testOrder().tests();
        return proof.testOrder().noticedBy().get(place(id)).stream()
                .map(t -> tests.get(t).id())
                .toList();
    }

    Mishaps notices(String id) {
        assertThat(noticedBy(id)).as(id).isNotEmpty();
        return this;
    }

    List<String> tests() {
        return proof.testOrder().tests().stream().map(HandTest::id).toList();
    }
}
