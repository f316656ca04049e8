package org.loomproof.workshop.prover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.fault.Mishap;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.prover.damage.Damage;
import org.loomproof.workshop.prover.verdict.Severity;

class PairSearchTest {

    private static final Jobs.Job JOB = Jobs.simple();
    private static final FaultProver.Pairwise CART =
            FaultProver.provePairs(JOB.brief(), JOB.plan(), FaultWatch.PATIENT);

    private static boolean isOf(MaskedPairs.Masked pair, String one, String other) {
        return Set.of(pair.one().id(), pair.other().id()).equals(Set.of(one, other));
    }

    private static MaskedPairs.Masked passing(String one, String other) {
        List<MaskedPairs.Masked> found = CART.pairs().passing().stream()
                .filter(pair -> isOf(pair, one, other))
                .toList();
        assertThat(found).as(one + " with " + other).hasSize(1);
        return found.getFirst();
    }

    /** 85 and 86 exchanged under a diode that is turned round as well: the diode lies against the coil's volts once more. */
    @Test
    void twoSlipsThatUndoEachOtherDoNoHarm() {
        MaskedPairs.Masked pair = passing("coil-swapped K1", "turned-round D1");
        assertThat(pair.severity()).isEqualTo(Severity.NONE);
        assertThat(pair.isRestless()).isFalse();
    }

    /**
     * A coil that takes a tenth of an ohm blows its fuse, which is seen. Where the controller's ground is a poor joint as well,
     * that current lifts the controller's ground until it lets go, and takes hold again: nothing is sure.
     */
    @Test
    void aPoorGroundMakesItUncertainWhatAShortShows() {
        assertThat(passing("part-shorted K1", "poor-joint W4").isRestless()).isTrue();
    }

    @Test
    void theWorstComeFirstAndOneOfEachIsNoticedAlone() {
        assertThat(CART.pairs().passing())
                .extracting(MaskedPairs.Masked::severity)
                .isSorted();
        for (MaskedPairs.Masked pair : CART.pairs().passing()) {
            assertThat(isNoticed(pair.one())).as(pair.one().id()).isTrue();
        }
    }

    private static boolean isNoticed(Mishap mishap) {
        for (int k = 0; k < CART.faults().results().size(); k++) {
            if (CART.faults().results().get(k).mishap().equals(mishap)) {
                return CART.faults().isNoticed(k);
            }
        }
        throw new AssertionError("no result for " + mishap.id());
    }

    @Test
    void aPairHasTheHarmThatEverySituationOfItsCarShows() {
        Brute brute = new Brute(JOB);
        for (MaskedPairs.Masked pair : Sample.of(CART.pairs().passing(), 6)) {
            Damage both = Damage.both(
                            pair.one(),
                            pair.other(),
                            JOB.brief(),
                            JOB.plan(),
                            brute.fitted().wired())
                    .orElseThrow();
            if (!pair.isRestless()) {
                assertThat(pair.breaks().stream().map(b -> b.claim()).collect(Collectors.toSet()))
                        .as(pair.one().id() + " with " + pair.other().id())
                        .isEqualTo(brute.broken(both));
            }
        }
    }

    @Test
    void itDoesNotMatterWhichOfTwoComesFirst() {
        List<Mishap> mishaps =
                CART.faults().results().stream().map(MishapResult::mishap).toList();
        Brute brute = new Brute(JOB);
        int both = 0;
        for (Mishap one : Sample.bySeed(mishaps, 12)) {
            for (Mishap other : Sample.bySeed(mishaps, 12)) {
                var there = Damage.both(
                        one, other, JOB.brief(), JOB.plan(), brute.fitted().wired());
                var back = Damage.both(
                        other, one, JOB.brief(), JOB.plan(), brute.fitted().wired());
                assertThat(there.map(Damage::plan)).isEqualTo(back.map(Damage::plan));
                assertThat(there.map(d -> Set.copyOf(d.changes()))).isEqualTo(back.map(d -> Set.copyOf(d.changes())));
                both += there.isPresent() ? 1 : 0;
            }
        }
        assertThat(both).isGreaterThan(40);
        assertThat(Damage.both(
                        mishaps.getFirst(),
                        mishaps.getFirst(),
                        JOB.brief(),
                        JOB.plan(),
                        brute.fitted().wired()))
                .isEmpty();
    }

    @Test
    void aSearchThatIsStoppedTellsWhatItLeft() {
        int singles = CART.faults().results().size();
        MaskedPairs part = FaultProver.provePairs(JOB.brief(), JOB.plan(), new StoppedAfter(singles + 100))
                .pairs();
        assertThat(part.left()).isPositive();
        assertThat(part.lookedAt() + part.left())
                .isEqualTo(Objects.requireNonNull(CART).pairs().lookedAt());
    }
}
