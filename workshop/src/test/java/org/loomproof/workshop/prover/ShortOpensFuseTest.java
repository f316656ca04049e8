package org.loomproof.workshop.prover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.loomproof.workshop.prover.Proven.proven;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.fixture.Altered;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.words.Messages;

/** Shorts of what was added to the handcart: a controller behind 5 A, a relay's coil behind 2 A, a starter behind the factory. */
class ShortOpensFuseTest {

    private static final Jobs.Job HANDCART = Jobs.simple();

    private static List<String> asked(Proven proven) {
        return proven.proof().results().stream()
                .map(ClaimResult::id)
                .filter(id -> id.startsWith("short-opens-fuse"))
                .toList();
    }

    private static Jobs.Job supplyFusedWith(double amps) {
        return HANDCART.with(Altered.part(HANDCART.plan(), new AddedPart.Fuse(new AddedPartId("F1"), new Amps(amps))));
    }

    @Test
    void asPlannedEveryRunIsGuarded() {
        Proven proven = proven(HANDCART);
        assertThat(asked(proven)).contains("short-opens-fuse W1", "short-opens-fuse W6");
        assertThat(asked(proven)).allSatisfy(proven::holds);
    }

    /**
     * Half a square millimetre of flexible wire is sure to hold 0.442 mm² of copper. A blade of 5 A melts with at most
     * 0.15 s · 30² A² = 135 A²s; at 105 °C copper resists 0.02297 Ω mm²/m, so the wire warms by
     * 135 · 2.297e-5 / (0.442² · 0.00345) = 4.6 K and has 45.4 K left of the 50.
     */
    @Test
    void aHardShortBehindASmallFuseWarmsAWireByWhatCanBeWorkedByHand() {
        Proven thin = proven(HANDCART.with(Altered.resized(HANDCART.plan(), "W1", 0.5, 0.5)));
        assertThat(thin.holds("short-opens-fuse W1").tightest().slack()).isCloseTo(45.4, within(0.5));
    }

    @Test
    void aFuseTooLargeForItsWireIsBrokenWhereverTheCarStands() {
        Jobs.Job job = supplyFusedWith(30);
        Jobs.Job thin = job.with(Altered.resized(job.plan(), "W1", 1.5, 0.35));
        Proven proven = proven(thin);
        Verdict.Broken broken = proven.broken("short-opens-fuse W1");
        assertThat(broken.worst().unit()).isEqualTo("K");
        assertThat(proven.steps("short-opens-fuse W1"))
                .containsExactly("do not do it: think of the end of wire W1 as chafed through to the body");
        assertThat(broken.witness().seen()).isNotEmpty();
    }

    /** Twelve metres of 0.35 mm² resist 0.6 Ω and let some 19 A through: 15 A need not open, and the wire bears 7 A. */
    @Test
    void aRunSoLongThatItsShortOpensNothingIsBroken() {
        Jobs.Job job = supplyFusedWith(15);
        Proven proven = proven(job.with(Altered.resized(job.plan(), "W1", 12, 0.35)));
        Verdict.Broken broken = proven.broken("short-opens-fuse W1");
        assertThat(broken.worst().unit()).isEqualTo("A");
        assertThat(Messages.english().text(broken.worst().computed())).endsWith("and no fuse surely opens");
    }

    /** The coil's feed is alive with the key on alone, and that is the one step. */
    @Test
    void theWitnessTakesTheFewestSteps() {
        Jobs.Job job =
                HANDCART.with(Altered.part(HANDCART.plan(), new AddedPart.Fuse(new AddedPartId("F2"), new Amps(30))));
        Proven proven = proven(job.with(Altered.resized(job.plan(), "W6", 1.5, 0.35)));
        assertThat(proven.steps("short-opens-fuse W6"))
                .containsExactly(
                        "turn the key to on",
                        "do not do it: think of the end of wire W6 as chafed through to the body");
    }

    /** The 0.2 m from the ignition to the fuse of 2 A are guarded by 30 A alone: told, never proven. */
    @Test
    void aThinStubBeforeItsFuseIsWhatIsLeft() {
        Proven proven = proven(HANDCART.with(Altered.resized(HANDCART.plan(), "W7", 0.2, 0.35)));
        assertThat(proven.proof().residuals()).extracting(left -> left.id()).contains("unfused W7");
        assertThat(asked(proven)).doesNotContain("short-opens-fuse W7");
    }
}
