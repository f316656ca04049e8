package org.loomproof.workshop.planner.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.AVehicle;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.fixture.Steps;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.planner.Changed;
import org.loomproof.workshop.planner.Planned;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.weigh.PlannedJob;
import org.loomproof.workshop.weigh.Weigher;

/** What the controller lives on: a constant supply that is one, fused near the take-off, and a screw of its own on the body. */
class SupplyRuleTest {

    private static final AnOrder NOTHING = AnOrder.forWishes();

    @Test
    void theFuseStandsNearTheTakeOffAndTheLeadRunsBehindIt() {
        Planned planned = Planned.of(Jobs.handcart(), AKit.simple(), NOTHING);

        planned.wire("lead supply", "FU1 2");
        assertThat(planned.wire("circuit constant tap", "FU1 1").length().value())
                .isLessThanOrEqualTo(0.3);
        planned.wire("lead ground", "body");
    }

    @Test
    void ofSeveralSuppliesTheOneWithTheLargestFactoryFuseIsTaken() {
        AVehicle car = Jobs.handcart().withConstantSupply("main", 40).withConstantSupply("radio", 10);
        Planned planned = Planned.of(car, AKit.simple(), NOTHING);

        assertThat(planned.connect("supply").circuits()).map(Object::toString).containsExactly("main");
        assertThat(planned.insteadOf("supply")).anyMatch(r -> r.contains("radio"));
    }

    @Test
    void aSupplyBehindTheKeyIsNotConstantWhateverTheSheetCallsIt() {
        AVehicle car = AVehicle.named("cart")
                .circuit(
                        "constant",
                        CircuitRole.CONSTANT_SUPPLY,
                        new Level.Supply(),
                        new Level.Supply(),
                        List.of(),
                        Access.MAY_BE_TAPPED,
                        List.of(
                                Steps.supply(),
                                Steps.fuse("F1", 20),
                                Steps.contact("switch", "key", "on"),
                                Steps.here()));

        Planned planned = Planned.of(car, AKit.simple(), NOTHING);
        assertThat(planned.decision("supply")).isEqualTo("find constant-supply");
        assertThat(planned.told()).contains("the battery's own post with a fuse beside it");
    }

    @Test
    void ofTwoSuppliesTheSwitchedOneIsPassedOverHoweverLargeItsFuse() {
        AVehicle car = Jobs.handcart()
                .circuit(
                        "seat-supply",
                        CircuitRole.CONSTANT_SUPPLY,
                        new Level.Supply(),
                        new Level.Supply(),
                        List.of(),
                        Access.MAY_BE_TAPPED,
                        List.of(
                                Steps.supply(),
                                Steps.fuse("F9", 40),
                                Steps.contact("isolator", "key", "off", "accessory", "on", "start"),
                                Steps.here()));
        Planned planned = Planned.of(car, AKit.simple(), NOTHING);

        assertThat(planned.connect("supply").circuits()).map(Object::toString).containsExactly("constant");
        assertThat(planned.insteadOf("supply")).anyMatch(r -> r.contains("seat-supply") && r.contains("switch"));
    }

    /** 14.8 V over 2 Ω are 7.4 A; a fuse of 10 A carries 7.5 A for long, one of 7.5 A carries 5.6 A. */
    @Test
    void aSupplyThatTheCarItselfUsesUpIsNotTapped() {
        assertThat(Planned.of(loaded(7.5, 2), AKit.simple(), NOTHING).decision("supply"))
                .isEqualTo("current-of constant");
        assertThat(Planned.of(loaded(10, 2), AKit.simple(), NOTHING).decision("supply"))
                .isEqualTo("connect");
    }

    /** Of the 7.5 A the car leaves 0.1 A; the siren of 1.2 A through the controller asks for more. */
    @Test
    void whatHangsOnASupplyTogetherMayAskForMoreThanItHas() {
        AnOrder siren = AnOrder.forWishes(Wish.SIREN);
        assertThat(Planned.of(loaded(10, 2), AKit.simple(), siren).cautionKeys())
                .contains("caution.no-reserve");
        assertThat(Planned.of(loaded(20, 2), AKit.simple(), siren).cautionKeys())
                .doesNotContain("caution.no-reserve");
    }

    private static AVehicle loaded(double fuse, double ohms) {
        return AVehicle.named("cart")
                .circuit(
                        "constant",
                        CircuitRole.CONSTANT_SUPPLY,
                        new Level.Supply(),
                        new Level.Supply(),
                        List.of(),
                        Access.MAY_BE_TAPPED,
                        List.of(
                                Steps.supply(),
                                Steps.fuse("F1", fuse),
                                Steps.here(),
                                Steps.electronic("fridge", ohms),
                                Steps.ground()));
    }

    @Test
    void aGuessedSupplyHoldsTheLeadAndLeavesEveryClaimOpen() {
        Brief brief = Changed.certainty(
                new Brief(
                        Jobs.handcart().sheet(),
                        AKit.simple().kit(),
                        AnOrder.forWishes(Wish.SIREN).watching("driver-door").order()),
                "constant",
                Certainty.GUESSED);

        assertThat(Planned.of(brief).decision("supply")).isEqualTo("levels-of constant");
        PlannedJob job = new Weigher().weigh(brief);
        assertThat(job.proof().results()).isNotEmpty().allMatch(r -> r.verdict() instanceof Verdict.Open);
    }

    @Test
    void aFuseThatIsNotSmallerThanTheFactorysIsSaid() {
        AVehicle car = AVehicle.named("cart").withConstantSupply("constant", 2);
        Planned planned = Planned.of(car, AKit.simple(), NOTHING);

        assertThat(planned.only(AddedPart.Fuse.class).rating().value()).isEqualTo(2);
        assertThat(planned.cautionKeys()).contains("caution.factory-fuse");
    }
}
