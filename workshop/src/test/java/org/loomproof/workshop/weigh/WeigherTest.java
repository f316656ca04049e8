package org.loomproof.workshop.weigh;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.DeclaredChange;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.AVehicle;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Figured;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.fixture.Steps;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.planner.Planner;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.prover.verdict.Witness;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

/** Three ways to work the horn: straight, with a diode in line, by relay. A judge that breaks what it is told to picks. */
class WeigherTest {

    private static final LeadId HORN = new LeadId("horn");
    private static final Phrase STATEMENT = Phrase.of("term.wish.horn");

    @Test
    void theFirstWayIsTakenWhenItIsProvenAndNoneHasFewerParts() {
        PlannedJob job = new Weigher((brief, plan, most) -> proof(false, false)).weigh(brief());

        assertThat(coupling(job.plan())).isEqualTo("coupling.straight");
        assertThat(job.search().plansProven()).isEqualTo(1);
        assertThat(job.bounds()).isEmpty();
    }

    @Test
    void aBrokenWayLosesToTheNextAndLeavesItsReason() {
        PlannedJob job = new Weigher((brief, plan, most) -> proof(coupling(plan).equals("coupling.straight"), false))
                .weigh(brief());

        assertThat(coupling(job.plan())).isEqualTo("coupling.isolation-diodes");
        assertThat(reasons(job.plan())).anyMatch(r -> r.contains("straight joint") && r.contains("would break"));
    }

    @Test
    void moreToSpareComesBeforeFewerPartsAndHundredthsDecideNothing() {
        PlannedJob tight = new Weigher((brief, plan, most) -> holding(plan, "coupling.straight", 0.05)).weigh(brief());
        PlannedJob alike = new Weigher((brief, plan, most) -> holding(plan, "coupling.straight", 0.31)).weigh(brief());

        assertThat(coupling(tight.plan())).isEqualTo("coupling.isolation-diodes");
        assertThat(reasons(tight.plan())).anyMatch(r -> r.contains("straight joint") && r.contains("less to spare"));
        assertThat(coupling(alike.plan())).isEqualTo("coupling.straight");
    }

    /** A proof in which the horn holds with so many volts to spare by one way, and with 0.32 V by all others. */
    private static Proof holding(Plan plan, String way, double volts) {
        double slack = coupling(plan).equals(way) ? volts : 0.32;
        Verdict holds = new Verdict.Holds(
                new Margin(slack, "V", STATEMENT, STATEMENT),
                new Situation(new TreeMap<>(), SupplyPoint.REST, ControllerState.DISARMED, ControllerFeed.WHOLE));
        return new Proof(
                List.of(new ClaimResult("does-its-work horn load", STATEMENT, holds, List.of())),
                new Proof.Effort(1, 0, 1, 1, 0),
                List.of());
    }

    @Test
    void anOpenWayLosesToAProvenOne() {
        PlannedJob job = new Weigher(
                        (brief, plan, most) -> proof(false, !coupling(plan).equals("coupling.relay")))
                .weigh(brief());

        assertThat(coupling(job.plan())).isEqualTo("coupling.relay");
        assertThat(job.search().plansProven()).isEqualTo(5);
        assertThat(reasons(job.plan()))
                .filteredOn(r -> r.contains("leave open"))
                .hasSize(4);
    }

    @Test
    void whenEveryWayIsBrokenTheSimplestIsGivenWithItsProof() {
        PlannedJob job = new Weigher((brief, plan, most) -> proof(true, false)).weigh(brief());

        assertThat(coupling(job.plan())).isEqualTo("coupling.straight");
        assertThat(job.proof().results()).anyMatch(r -> r.verdict() instanceof Verdict.Broken);
        assertThat(reasons(job.plan())).anyMatch(r -> r.contains("more parts"));
    }

    @Test
    void aWishThatOnlyBreaksThingsIsTurnedDownAndTheRestIsPlanned() {
        PlannedJob job = new Weigher((brief, plan, most) ->
                        proof(plan.findHookup(HORN).orElseThrow() instanceof Hookup.Connect, false))
                .weigh(brief());

        assertThat(job.proof().results()).isEmpty();
        assertThat(job.plan().refusals()).extracting(r -> r.wish()).containsExactly(Wish.HORN);
        assertThat(job.plan().findHookup(HORN).orElseThrow()).isInstanceOf(Hookup.CapAndKeep.class);
        assertThat(Messages.english().text(job.plan().refusals().getFirst().because()))
                .contains("No coupling that was tried for the horn");
    }

    @Test
    void everyWishTurnedDownKeepsItsOwnReason() {
        Brief brief = new Brief(
                brief().sheet(),
                AKit.named("kit")
                        .supply("supply")
                        .ground("ground")
                        .lowSide("horn", LeadRole.HORN, 0.5, Set.of(ControllerState.SOUNDING))
                        .highSide("siren", LeadRole.SIREN, 3, Set.of(ControllerState.SOUNDING))
                        .extra(new Extra(
                                "sounder",
                                Extra.Kind.SOUNDER,
                                Optional.of(Figured.amps(1.2)),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty()))
                        .kit(),
                AnOrder.forWishes(Wish.HORN, Wish.SIREN).order());
        List<LeadId> breaking = List.of(HORN, new LeadId("siren"));

        PlannedJob job = new Weigher((b, plan, most) -> proof(countConnected(plan, breaking))).weigh(brief);

        assertThat(job.plan().refusals()).extracting(r -> r.wish()).containsExactlyInAnyOrder(Wish.HORN, Wish.SIREN);
        assertThat(breaking)
                .allSatisfy(lead -> assertThat(Messages.english()
                                .text(job.plan().findHookup(lead).orElseThrow().because()))
                        .startsWith("Refused in this car"));
    }

    private static long countConnected(Plan plan, List<LeadId> leads) {
        return leads.stream()
                .filter(lead -> plan.findHookup(lead).orElseThrow() instanceof Hookup.Connect)
                .count();
    }

    /** So many broken claims. */
    private static Proof proof(long broken) {
        List<ClaimResult> results = new ArrayList<>();
        for (long i = 0; i < broken; i++) {
            results.addAll(proof(true, false).results());
        }
        return new Proof(results, new Proof.Effort(1, 0, 1, 1, 0), List.of());
    }

    @Test
    void aLeadOnHoldDoesNotSendTheSearchThroughPlansThatWouldHoldItToo() {
        Brief brief = brief();
        Brief waiting = new Brief(
                brief.sheet(),
                AKit.named("kit")
                        .supply("supply")
                        .ground("ground")
                        .lowSide("horn", LeadRole.HORN, 0.5, Set.of(ControllerState.SOUNDING))
                        .lowSide("light", LeadRole.INTERIOR_LIGHT, 0.5, Set.of(ControllerState.DISARMED))
                        .kit(),
                AnOrder.forWishes(Wish.HORN, Wish.INTERIOR_LIGHT).order());
        PlannedJob job = new Weigher((b, plan, most) -> openUntil(plan)).weigh(waiting);

        assertThat(coupling(job.plan())).isEqualTo("coupling.straight");
        assertThat(job.search().plansProven()).isEqualTo(1);
    }

    @Test
    void theHandcartIsProvenWholeByTheRealProver() {
        PlannedJob job = new Weigher().weigh(Jobs.simple().brief());

        assertThat(job.proof().results()).isNotEmpty().allMatch(r -> r.verdict() instanceof Verdict.Holds);
    }

    @Test
    void theVanIsProvenWholeByTheRealProver() {
        PlannedJob job = new Weigher().weigh(Jobs.vanJob().brief());

        assertThat(job.proof().results()).isNotEmpty().allMatch(r -> r.verdict() instanceof Verdict.Holds);
    }

    @Test
    void aPlanThatTheCustomerNeedNotSignForBeatsOneThatHeMust() {
        DeclaredChange change = new DeclaredChange(
                new ElementId("lamp"),
                new DeclaredChange.Becomes.Reads(false),
                Map.of(),
                Optional.empty(),
                "told",
                "why");
        Situation situation =
                new Situation(new TreeMap<>(), SupplyPoint.REST, ControllerState.DISARMED, ControllerFeed.WHOLE);
        Verdict declared = new Verdict.Declared(change, STATEMENT, new Witness(List.of(), situation, List.of()));
        Proof signed = new Proof(
                List.of(new ClaimResult("declared", STATEMENT, declared, List.of())),
                new Proof.Effort(1, 0, 1, 1, 0),
                List.of());
        Plan plan = Planner.plan(brief()).plans().getFirst();

        Score must = Score.of(brief(), plan, signed);
        Score neednt = Score.of(brief(), plan, proof(false, false));
        assertThat(must).isGreaterThan(neednt).isLessThan(Score.of(brief(), plan, proof(false, true)));
        assertThat(Losers.isWorse(must, neednt)).isEqualTo(Losers.Worse.DECLARED);
    }

    private static Proof proof(boolean broken, boolean open) {
        List<ClaimResult> results = new ArrayList<>();
        if (broken) {
            Situation situation =
                    new Situation(new TreeMap<>(), SupplyPoint.REST, ControllerState.DISARMED, ControllerFeed.WHOLE);
            Verdict verdict = new Verdict.Broken(
                    new Margin(-1, "V", STATEMENT, STATEMENT), new Witness(List.of(), situation, List.of()));
            results.add(new ClaimResult("broken", STATEMENT, verdict, List.of()));
        }
        if (open) {
            results.add(new ClaimResult("open", STATEMENT, new Verdict.Open(STATEMENT, List.of()), List.of()));
        }
        return new Proof(results, new Proof.Effort(1, 0, 1, 1, 0), List.of());
    }

    /** A proof that leaves open what waits for the readings of the plan's holds. */
    private static Proof openUntil(Plan plan) {
        List<ClaimResult> results = plan.hookups().stream()
                .filter(Hookup.Hold.class::isInstance)
                .map(h -> new ClaimResult(
                        "open", STATEMENT, new Verdict.Open(STATEMENT, List.of(((Hookup.Hold) h).until())), List.of()))
                .toList();
        return new Proof(results, new Proof.Effort(1, 0, 1, 1, 0), List.of());
    }

    private static String coupling(Plan plan) {
        return ((Hookup.Connect) plan.findHookup(HORN).orElseThrow()).coupling();
    }

    private static List<String> reasons(Plan plan) {
        return plan.findHookup(HORN).orElseThrow().insteadOf().stream()
                .map(Messages.english()::text)
                .toList();
    }

    private static Brief brief() {
        AVehicle car = AVehicle.named("cart")
                .withConstantSupply("constant", 20)
                .control("horn-button", "rest", "pressed")
                .circuit(
                        "horn-wire",
                        CircuitRole.HORN,
                        new Level.Supply(),
                        new Level.Ground(),
                        List.of("horn-button"),
                        Access.MAY_BE_TAPPED,
                        List.of(
                                Steps.supply(),
                                Steps.coil("horn-coil", "horn-relay", 100),
                                Steps.here(),
                                Steps.contact("horn-switch", "horn-button", "pressed"),
                                Steps.ground()));
        AKit kit = AKit.named("kit")
                .supply("supply")
                .ground("ground")
                .lowSide("horn", LeadRole.HORN, 0.5, Set.of(ControllerState.SOUNDING));
        return new Brief(car.sheet(), kit.kit(), AnOrder.forWishes(Wish.HORN).order());
    }
}
