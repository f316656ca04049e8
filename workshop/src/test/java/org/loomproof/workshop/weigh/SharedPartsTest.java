package org.loomproof.workshop.weigh;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.kit.OutputBehaviour;
import org.loomproof.workshop.brief.kit.OutputTiming;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.AVehicle;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Figured;
import org.loomproof.workshop.fixture.Steps;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.planner.Planner;
import org.loomproof.workshop.planner.search.Candidates;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.prover.verdict.Verdict;

/** One part for several hookups: where it pays, where the proof forbids it, and where it is not tried. */
class SharedPartsTest {

    private static final Set<ControllerState> SOUNDING = Set.of(ControllerState.SOUNDING);

    /** Left and right lamps that one contact works anyway: one relay bears both, with one diode across its coil. */
    @Test
    void oneRelayWorksTwoWiresThatOneContactWorks() {
        Brief brief = lamps("both", "both", 21);

        PlannedJob job = new Weigher().weigh(brief);

        assertThat(countRelays(Planner.plan(brief).plans().getFirst())).isEqualTo(2);
        assertThat(countRelays(job.plan())).isEqualTo(1);
        assertThat(count(job.plan(), AddedPart.Diode.class)).isEqualTo(1);
        Weighed.nothingIsBroken(brief.order().job(), job);
    }

    /** A stalk lights one side alone: with one relay it would light both, so that two stay and only the diode is shared. */
    @Test
    void twoWiresThatAHandWorksApartKeepARelayEach() {
        Brief brief = lamps("left", "right", 21);
        Candidates candidates = Planner.plan(brief);

        PlannedJob job = new Weigher().weigh(brief);

        assertThat(countRelays(job.plan())).isEqualTo(2);
        assertThat(count(job.plan(), AddedPart.Diode.class)).isEqualTo(1);
        Weighed.nothingIsBroken(brief.order().job(), job);
        List<Plan> tried = candidates.sharing().share(candidates.plans().getFirst());
        assertThat(tried)
                .filteredOn(plan -> countRelays(plan) == 1)
                .isNotEmpty()
                .allSatisfy(plan -> assertThat(Prover.prove(brief, plan).results())
                        .anyMatch(result -> result.verdict() instanceof Verdict.Broken));
    }

    /** 130 W at 14.8 V is 10.2 A a side: each bears it, one contact for both would have to be rated for twice the filaments. */
    @Test
    void aContactThatDoesNotBearBothIsNotTried() {
        Candidates candidates = Planner.plan(lamps("both", "both", 60));

        assertThat(candidates.sharing().share(candidates.plans().getFirst()))
                .isNotEmpty()
                .allSatisfy(plan -> assertThat(countRelays(plan)).isEqualTo(2));
    }

    /** Siren and horn hang on one supply by relays, each behind a fuse of its own: what shorts one must not silence both. */
    @Test
    void fusesOfTwoWishesStayApart() {
        AVehicle car = car().control("knob", "off", "pressed");
        car.circuit(
                "horn-wire",
                CircuitRole.HORN,
                new Level.Ground(),
                new Level.Supply(),
                List.of("knob"),
                Access.MAY_BE_TAPPED,
                List.of(List.of(
                        Steps.supply(),
                        Steps.fuse("horn-fuse", 20),
                        Steps.contact("knob-contact", "knob", "pressed"),
                        Steps.here(),
                        Steps.electronic("horns", 2.5),
                        Steps.ground())));
        AKit kit = AKit.named("any kit")
                .supply("supply")
                .ground("ground")
                .extra(new Extra(
                        "siren",
                        Extra.Kind.SOUNDER,
                        Optional.of(Figured.amps(1.2)),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()))
                .lowSide("siren", LeadRole.SIREN, 0.4, SOUNDING)
                .lowSide("horn", LeadRole.HORN, 0.4, SOUNDING);
        Brief brief = new Brief(
                car.sheet(), kit.kit(), AnOrder.forWishes(Wish.SIREN, Wish.HORN).order());

        PlannedJob job = new Weigher().weigh(brief);

        assertThat(countRelays(job.plan())).isEqualTo(2);
        assertThat(count(job.plan(), AddedPart.Fuse.class)).isEqualTo(3);
        Weighed.nothingIsBroken(brief.order().job(), job);
    }

    @Test
    void theSameIsSharedEveryTime() {
        Brief brief = lamps("left", "right", 21);

        assertThat(new Weigher().weigh(brief).plan())
                .isEqualTo(new Weigher().weigh(brief).plan());
    }

    private static long countRelays(Plan plan) {
        return count(plan, AddedPart.Relay.class);
    }

    private static long count(Plan plan, Class<? extends AddedPart> kind) {
        return plan.parts().stream().filter(kind::isInstance).count();
    }

    private static AVehicle car() {
        return AVehicle.named("any car").withConstantSupply("constant", 40).withIgnition("ignition");
    }

    /** Lamps of that many watts each that a stalk takes to the body, and an output that gives the supply. */
    private static Brief lamps(String left, String right, double watts) {
        AVehicle car = car().control("stalk", "off", "left", "right", "both");
        side(car, "left", left, watts);
        side(car, "right", right, watts);
        AKit kit = AKit.named("any kit")
                .supply("supply")
                .ground("ground")
                .lead(
                        "lamps",
                        LeadRole.LAMPS,
                        new Port.HighSide(Figured.amps(0.5), Figured.volts(0.2), Optional.empty(), false),
                        false)
                .output(new OutputBehaviour(new LeadId("lamps"), SOUNDING, OutputTiming.STEADY));
        return new Brief(car.sheet(), kit.kit(), AnOrder.forWishes(Wish.LAMPS).order());
    }

    private static void side(AVehicle car, String name, String closedAt, double watts) {
        car.circuit(
                name + "-lamps",
                CircuitRole.PARKING_LAMP,
                new Level.Supply(),
                new Level.Ground(),
                List.of("stalk"),
                Access.MAY_BE_TAPPED,
                List.of(List.of(
                        Steps.supply(),
                        Steps.fuse(name + "-fuse", 15),
                        Steps.lamp(name + "-bulbs", watts),
                        Steps.here(),
                        Steps.contact(name + "-contact", "stalk", closedAt),
                        Steps.ground())));
    }
}
