package org.loomproof.workshop.prover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.fixture.APlan;
import org.loomproof.workshop.fixture.Altered;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.prover.verdict.ThreatResult;
import org.loomproof.workshop.words.Messages;

/** What a thief achieves from inside an armed car, by the way the starter is kept from turning. */
class ThreatsTest {

    private static final Jobs.Job HANDCART = Jobs.simple();

    private static Map<String, String> outcomes(Jobs.Job job) {
        return Prover.prove(job.brief(), job.plan()).threats().stream()
                .collect(Collectors.toMap(
                        t -> t.id().replace(" starter-solenoid", ""),
                        t -> t.outcome().word()));
    }

    private static List<String> steps(Jobs.Job job, String id) {
        ThreatResult threat = Prover.prove(job.brief(), job.plan()).threats().stream()
                .filter(t -> t.id().startsWith(id))
                .findFirst()
                .orElseThrow();
        return threat.steps().stream().map(Messages.english()::text).toList();
    }

    /**
     * A break contact in the starter wire, its coil fed by the ignition: whatever takes the coil's power away starts the car, and
     * so does whatever goes round the contact. With the ignition off the coil has no power: the starter turns, no more. Without
     * the ignition's fuse it does so too, though no engine runs: the sheet does not say what that fuse feeds, and it is told
     * as starting.
     */
    @Test
    void aContactThatRestsClosedYieldsToWhateverTakesItsPower() {
        assertThat(outcomes(HANDCART))
                .containsOnly(
                        Map.entry("start-wire-to-constant starter", "turns-only"),
                        Map.entry("cut-bridged starter", "starts"),
                        Map.entry("starter-side-to-constant starter", "starts"),
                        Map.entry("controller-unplugged", "starts"),
                        Map.entry("ground-opened", "starts"),
                        Map.entry("fuse-pulled F1", "starts"),
                        Map.entry("fuse-pulled F2", "starts"),
                        Map.entry("fuse-pulled constant-fuse", "starts"),
                        Map.entry("fuse-pulled ignition-fuse", "starts"),
                        Map.entry("relay-taken-out K1", "does-not-start"));
    }

    /** The wire behind the cut turns it without the key at start; the rest needs that. */
    @Test
    void theStepsSayWhetherTheKeyIsNeeded() {
        assertThat(steps(HANDCART, "starter-side-to-constant"))
                .containsExactly("arm and wait 20 s", "turn the key to on");
        assertThat(steps(HANDCART, "start-wire-to-constant")).containsExactly("arm and wait 20 s");
        assertThat(steps(HANDCART, "cut-bridged")).containsExactly("arm and wait 20 s", "turn the key to start");
        assertThat(steps(HANDCART, "controller-unplugged"))
                .containsExactly("arm and wait 20 s", "turn the key to start");
    }

    /** A wire bridged to plus on the key's side gets through when nothing pulls the contact open. */
    @Test
    void aStartWireBridgedAheadOfAContactThatNothingHoldsOpenStarts() {
        Jobs.Job unfed = HANDCART.with(Altered.withoutWire(HANDCART.plan(), "W6"));
        assertThat(outcomes(unfed)).containsEntry("start-wire-to-constant starter", "starts");
        assertThat(steps(unfed, "start-wire-to-constant")).containsExactly("arm and wait 20 s", "turn the key to on");
    }

    /** With the make contact in the wire a dead controller means a dead car: then pulling helps nobody. */
    @Test
    void aContactThatRestsOpenYieldsOnlyToABridge() {
        assertThat(outcomes(Jobs.failSecure()))
                .containsEntry("controller-unplugged", "does-not-start")
                .containsEntry("fuse-pulled F1", "does-not-start")
                .containsEntry("ground-opened", "does-not-start")
                .containsEntry("cut-bridged starter", "starts");
    }

    @Test
    void aPlanWithoutAnInterruptHasNothingToReport() {
        Brief brief = new Brief(
                HANDCART.brief().sheet(),
                HANDCART.brief().kit(),
                AnOrder.forWishes(Wish.SIREN).order());
        Jobs.Job alarmOnly = new Jobs.Job(
                brief,
                APlan.byHand()
                        .load("B1", "sounder", 1.2)
                        .fuse("F1", 5)
                        .wire("W1", "lead supply", "F1 2")
                        .wire("W2", "F1 1", "circuit constant tap", 0.2, 1)
                        .wire("W4", "lead ground", "body")
                        .wire("W12", "lead siren", "B1 +")
                        .wire("W13", "B1 -", "body")
                        .connect("supply", Wish.BASICS, "constant", "F1", "W1 W2")
                        .connect("ground", Wish.BASICS, "", "", "W4")
                        .connect("siren", Wish.SIREN, "", "B1", "W12 W13")
                        .forKit(brief.kit()));
        assertThat(Prover.prove(alarmOnly.brief(), alarmOnly.plan()).threats()).isEmpty();
    }
}
