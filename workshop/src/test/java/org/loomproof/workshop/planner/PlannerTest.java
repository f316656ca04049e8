package org.loomproof.workshop.planner;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.Refusal;
import org.loomproof.workshop.planner.search.CandidateSearch;
import org.loomproof.workshop.planner.search.Candidates;
import org.loomproof.workshop.words.Messages;

/** Whatever the brief: every lead decided once, every wish served, waiting or refused, and no part or wire left hanging. */
class PlannerTest {

    private static final int SAMPLED = 300;
    private static final int IN_FULL = 5000;

    private static final Messages ENGLISH = Messages.english();

    /** What several tests look at; not kept in full, where it would be too much. */
    private static final Map<Long, Planned> PLANNED = new HashMap<>();

    static LongStream seeds() {
        return Sample.seeds(SAMPLED, IN_FULL);
    }

    /** Fewer: each is planned three times. */
    static LongStream fewerSeeds() {
        return Sample.seeds(SAMPLED / 4, IN_FULL);
    }

    private static Planned planned(long seed) {
        return Sample.full()
                ? Planned.of(AnyBrief.from(seed))
                : PLANNED.computeIfAbsent(seed, one -> Planned.of(AnyBrief.from(one)));
    }

    @AfterAll
    static void forget() {
        PLANNED.clear();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anyBriefGetsAPlanInWhichEveryLeadIsDecidedOnce(long seed) {
        Brief brief = AnyBrief.from(seed);
        Planned planned = planned(seed);
        Candidates candidates = planned.candidates();

        assertThat(candidates.plans()).hasSizeLessThanOrEqualTo(CandidateSearch.MOST_CANDIDATES);
        for (Plan plan : candidates.plans()) {
            assertThat(plan.hookups().stream().map(Hookup::lead))
                    .containsExactlyElementsOf(
                            brief.kit().leads().stream().map(Lead::id).toList());
            everyWishIsSpokenFor(brief, plan);
            nobodyIsLeftWithoutAWayOn(plan);
            everyEndIsThere(brief, plan);
            everyPartIsJoinedAndNamedByAHookup(plan);
        }
        assertThat(planned.told()).isNotBlank();
    }

    /**
     * Nothing of any plan can turn an engine: what touches a starter wire is 30 and 87a of a relay at its cut ends, so the wire
     * is whole or open and never fed by us; what is meant for remote start is joined to nothing. And nothing is joined to
     * circuits of the restraints, the high voltage, ignition by a cut, fuel pump, or messages.
     */
    @ParameterizedTest
    @MethodSource("seeds")
    void noPlanCanTurnAnEngineOrTouchesWhatMustBeLeft(long seed) {
        Brief brief = AnyBrief.from(seed);
        for (Plan plan : planned(seed).candidates().plans()) {
            for (AddedWire wire : plan.wires()) {
                nothingFeedsAStarter(brief, wire.from(), wire.to());
                nothingFeedsAStarter(brief, wire.to(), wire.from());
            }
            brief.kit().leads().stream()
                    .filter(lead -> lead.role() == LeadRole.REMOTE_START)
                    .forEach(
                            lead -> assertThat(plan.findHookup(lead.id())).get().isInstanceOf(Hookup.CapAndKeep.class));
        }
    }

    private static void nothingFeedsAStarter(Brief brief, End end, End other) {
        switch (end) {
            case End.Tap(var circuit) ->
                assertThat(brief.sheet().circuit(circuit).role())
                        .isNotIn(
                                CircuitRole.STARTER,
                                CircuitRole.SECOND_STARTER,
                                CircuitRole.RESTRAINT,
                                CircuitRole.HIGH_VOLTAGE,
                                CircuitRole.FUEL_PUMP,
                                CircuitRole.DATA);
            case End.CutBefore(var circuit) -> onlyTheContactAtACut(brief, circuit, other);
            case End.CutAfter(var circuit) -> onlyTheContactAtACut(brief, circuit, other);
            case End.OfLead lead -> {}
            case End.OfPart part -> {}
            case End.Body body -> {}
        }
    }

    private static void onlyTheContactAtACut(Brief brief, CircuitId circuit, End other) {
        CircuitRole role = brief.sheet().circuit(circuit).role();
        if (role == CircuitRole.STARTER || role == CircuitRole.SECOND_STARTER) {
            assertThat(other)
                    .isInstanceOfSatisfying(
                            End.OfPart.class,
                            part -> assertThat(part.terminal()).isIn("30", "87a"));
        } else {
            assertThat(role).isIn(CircuitRole.LOCK, CircuitRole.UNLOCK, CircuitRole.LOCK_MOTOR_LEG);
        }
    }

    @ParameterizedTest
    @MethodSource("fewerSeeds")
    void theSameBriefGivesTheSamePlansInWhateverOrderItsSheetListsCircuits(long seed) {
        Brief brief = AnyBrief.from(seed);

        List<Object> told = told(planned(seed).candidates());
        assertThat(told(Planner.plan(brief))).isEqualTo(told);
        assertThat(told(Planner.plan(Changed.shuffled(brief, seed)))).isEqualTo(told);
    }

    /** All that candidates say: the plans, those in which the first one's parts are shared, and how they were found. */
    private static List<Object> told(Candidates candidates) {
        return List.of(
                candidates.plans(),
                candidates.sharing().share(candidates.plans().getFirst()),
                candidates.thereAre(),
                candidates.bounds(),
                candidates.searches());
    }

    @Test
    void theseBriefsTogetherTryEveryCouplingAndEveryDecision() {
        Set<String> couplings = new TreeSet<>();
        Set<String> decisions = new TreeSet<>();
        seeds().mapToObj(PlannerTest::planned)
                .map(Planned::candidates)
                .forEach(candidates -> candidates.plans().stream()
                        .flatMap(p -> p.hookups().stream())
                        .forEach(h -> {
                            decisions.add(h.getClass().getSimpleName());
                            if (h instanceof Hookup.Connect c) {
                                couplings.add(c.coupling());
                            }
                        }));
        assertThat(decisions).containsExactly("CapAndKeep", "Connect", "Hold", "Trim");
        assertThat(couplings)
                .contains(
                        "coupling.straight",
                        "coupling.fused-supply",
                        "coupling.body-ground",
                        "coupling.isolation-diodes",
                        "coupling.inverting-relay",
                        "coupling.added-pin",
                        "coupling.break-contact",
                        "coupling.relay",
                        "coupling.added-load",
                        "coupling.added-load-by-relay",
                        "coupling.plug");
    }

    /**
     * 12 mA of kit and 18 mA of car on 70 Ah: 40 % are 28 Ah, 933 h, 38 days at +20 °C; 21.5 % are 15.05 Ah, 501 h, 20 days at
     * -10 °C, under the 21 asked where it gets that cold.
     */
    @Test
    void aParkedBatteryThatDoesNotLastInTheColdIsACaution() {
        Brief brief = Jobs.simple().brief();
        Planned planned = Planned.of(new Brief(
                brief.sheet(),
                brief.kit(),
                AnOrder.forWishes(Wish.STARTER_INTERRUPT, Wish.SIREN)
                        .watching("driver-door")
                        .unusedFor(21)
                        .order()));
        assertThat(planned.told()).contains("38 days at +20 °C").contains("20 days at −10 °C");
        assertThat(planned.cautionKeys()).contains("caution.drain").doesNotContain("info.drain");
    }

    /** A refusal always says why and what would do instead; a hold always names the reading that settles it. */
    private static void nobodyIsLeftWithoutAWayOn(Plan plan) {
        for (Refusal refusal : plan.refusals()) {
            assertThat(ENGLISH.text(refusal.because())).isNotBlank();
            assertThat(ENGLISH.text(refusal.possibleIf())).isNotBlank().isNotEqualTo(ENGLISH.text(refusal.because()));
        }
        for (Hookup hookup : plan.hookups()) {
            if (hookup instanceof Hookup.Hold hold) {
                assertThat(hold.until().name()).isNotBlank();
                assertThat(ENGLISH.text(hold.until().what())).isNotBlank();
            }
        }
    }

    private static void everyWishIsSpokenFor(Brief brief, Plan plan) {
        Set<Wish> open = new HashSet<>(brief.order().wishes());
        plan.refusals().forEach(r -> open.remove(r.wish()));
        for (Hookup hookup : plan.hookups()) {
            switch (hookup) {
                case Hookup.Connect c -> {
                    open.remove(c.serves());
                    if (c.serves() == Wish.SIREN) {
                        open.remove(Wish.SECOND_SOUNDER);
                    }
                    if (c.serves() == Wish.LOCKS && worksALoad(plan, c)) {
                        open.remove(Wish.LOCK_ACTUATORS);
                    }
                }
                case Hookup.Hold h -> open.remove(h.serves());
                case Hookup.Trim t -> {}
                case Hookup.CapAndKeep c -> {}
            }
        }
        open.remove(Wish.WATCH_OPENINGS);
        assertThat(open).isEmpty();
    }

    private static boolean worksALoad(Plan plan, Hookup.Connect connect) {
        return connect.parts().stream()
                .flatMap(id -> plan.findPart(id).stream())
                .anyMatch(AddedPart.Load.class::isInstance);
    }

    private static void everyEndIsThere(Brief brief, Plan plan) {
        for (AddedWire wire : plan.wires()) {
            assertThat(wire.from()).isNotEqualTo(wire.to());
            for (End end : new End[] {wire.from(), wire.to()}) {
                switch (end) {
                    case End.OfLead(var lead) ->
                        assertThat(plan.findHookup(lead)).containsInstanceOf(Hookup.Connect.class);
                    case End.OfPart(var part, var terminal) ->
                        assertThat(plan.findPart(part).orElseThrow().terminals())
                                .contains(terminal);
                    case End.Tap(var circuit) ->
                        assertThat(brief.sheet().circuit(circuit)).isNotNull();
                    case End.CutBefore(var circuit) ->
                        assertThat(brief.sheet().circuit(circuit)).isNotNull();
                    case End.CutAfter(var circuit) ->
                        assertThat(brief.sheet().circuit(circuit)).isNotNull();
                    case End.Body body -> {}
                }
            }
        }
    }

    private static void everyPartIsJoinedAndNamedByAHookup(Plan plan) {
        Set<AddedPartId> joined = new HashSet<>();
        for (AddedWire wire : plan.wires()) {
            for (End end : new End[] {wire.from(), wire.to()}) {
                if (end instanceof End.OfPart(var part, var terminal)) {
                    joined.add(part);
                }
            }
        }
        Set<AddedPartId> named = new HashSet<>();
        plan.hookups().forEach(h -> {
            if (h instanceof Hookup.Connect c) {
                named.addAll(c.parts());
            }
        });
        Set<AddedPartId> all =
                new HashSet<>(plan.parts().stream().map(AddedPart::id).toList());
        assertThat(joined).isEqualTo(all);
        assertThat(named).isEqualTo(all);
    }
}
