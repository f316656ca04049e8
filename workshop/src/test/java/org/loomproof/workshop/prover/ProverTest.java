package org.loomproof.workshop.prover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.loomproof.workshop.prover.Proven.proven;

import java.util.List;
import java.util.Set;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.APlan;
import org.loomproof.workshop.fixture.AVehicle;
import org.loomproof.workshop.fixture.Altered;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Assuming;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.fixture.Steps;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.words.Phrase;

class ProverTest {

    @Test
    void everyClaimHoldsForTheHandcart() {
        proven(Jobs.simple()).holdsThroughout();
    }

    @Test
    void everyClaimHoldsForTheVan() {
        proven(Jobs.vanJob()).holdsThroughout();
    }

    /** One thread or several, the same bits. */
    @Test
    void theSameProofComesOutHoweverManyThreadsShareTheWork() {
        Jobs.Job job = Jobs.vanJob();
        Brief brief = new Brief(
                Assuming.within(0.1, job.brief().sheet()),
                job.brief().kit(),
                job.brief().order());
        Proof alone;
        try (ForkJoinPool one = new ForkJoinPool(1)) {
            alone = one.submit(() -> Prover.prove(brief, job.plan())).join();
        }
        assertThat(Prover.prove(brief, job.plan())).isEqualTo(alone);
        assertThat(alone.effort().corners()).isPositive();
        assertThat(alone.bounds()).extracting(Phrase::key).contains("bound.corners");
    }

    /** A body computer's lock input is pulled to ground by the controller; its own switch does the same. */
    @Test
    void anOutputWorksAFactoryInputAsItsOwnSwitchDoes() {
        Kit kit = AKit.simple()
                .lowSide("lock", LeadRole.LOCK, 0.25, Set.of(ControllerState.ARMED))
                .kit();
        AVehicle vehicle = Jobs.handcart()
                .control("lock-switch", "rest", "lock")
                .circuit(
                        "lock-line",
                        CircuitRole.LOCK,
                        new Level.Voltage(new Volts(5)),
                        new Level.Ground(),
                        List.of("lock-switch"),
                        Access.MAY_BE_TAPPED,
                        List.of(Steps.ground(), Steps.contact("lock-contact", "lock-switch", "lock"), Steps.here()),
                        List.of(Steps.here(), Steps.moduleInput("lock-input", 1000)));
        Brief brief = new Brief(
                vehicle.sheet(),
                kit,
                AnOrder.forWishes(Wish.STARTER_INTERRUPT, Wish.SIREN, Wish.LOCKS)
                        .watching("driver-door")
                        .order());
        APlan plan = Jobs.simplePlan()
                .wire("W50", "lead lock", "circuit lock-line tap")
                .connect("lock", Wish.LOCKS, "lock-line", "", "W50");
        Proven proven = proven(new Jobs.Job(brief, plan.forKit(kit)));
        proven.holds("does-its-work lock lock-input");
        proven.holds("stock-as-before lock-input");
        Proven loose = proven(new Jobs.Job(brief, Altered.rewired(plan.forKit(kit), "W50", "lead lock", "lead lock")));
        assertThat(loose.steps("does-its-work lock lock-input")).containsExactly("arm and wait 20 s");
    }
}
