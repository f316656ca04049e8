package org.loomproof.workshop.weigh;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.Choice;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.KitOption;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.AVehicle;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Figured;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.prover.verdict.Verdict;

/** What is set on the kit is part of the plan: it changes what a lead is, and so what stands between it and the car. */
class KitSettingsTest {

    private static final Choice TURNED = new Choice("door input polarity", "supply when open");

    @Test
    void aJumperThatTurnsTheInputSparesTheInvertingRelay() {
        PlannedJob with = new Weigher().weigh(positiveDoor(AKit.simple().option(polarity())));
        PlannedJob without = new Weigher().weigh(positiveDoor(AKit.simple()));

        assertThat(with.plan().settings()).containsExactly(TURNED);
        assertThat(coupling(with.plan(), "trigger")).isEqualTo("coupling.straight");
        assertThat(coupling(without.plan(), "trigger")).isEqualTo("coupling.inverting-relay");
        assertThat(with.plan().parts()).hasSizeLessThan(without.plan().parts().size());
        assertThat(broken(positiveDoor(AKit.simple().option(polarity())), with.plan()))
                .isEmpty();
    }

    @Test
    void theSamePlanWithTheJumperAsItComesIsBroken() {
        Brief brief = positiveDoor(AKit.simple().option(polarity()));
        Plan planned = new Weigher().weigh(brief).plan();

        assertThat(broken(brief, planned.withSettings(List.of())))
                .anyMatch(id -> id.startsWith("opening-seen"))
                .anyMatch(id -> id.startsWith("quiet-when-closed"));
    }

    @Test
    void nothingIsSetWhereTheKitDoesAsItComes() {
        PlannedJob job = new Weigher()
                .weigh(new Brief(
                        Jobs.handcart().sheet(),
                        AKit.simple().option(polarity()).kit(),
                        AnOrder.forWishes().watching("driver-door").order()));

        assertThat(job.plan().settings()).isEmpty();
        assertThat(coupling(job.plan(), "trigger")).isEqualTo("coupling.straight");
    }

    /** A lamp of 10 W rushes 14.8 V / (18.2 Ω · 0.08 · 0.84) = 12 A where it is cold; an output of 15 A bears that for long. */
    @Test
    void anOutputTurnedToSupplyReachesALampWithoutARelay() {
        KitOption option = new KitOption(
                "lamp output",
                List.of(
                        new KitOption.Setting("ground", Map.of()),
                        new KitOption.Setting(
                                "supply",
                                Map.of(
                                        new LeadId("lamps"),
                                        new Port.HighSide(
                                                Figured.amps(15), Figured.volts(0.1), Optional.empty(), false)))));
        AKit kit = AKit.simple()
                .lowSide("lamps", LeadRole.LAMPS, 0.5, Set.of(ControllerState.SOUNDING))
                .option(option);
        AVehicle car =
                Jobs.handcart().control("lights", "off", "on").withParkingLamps("side-lamps", "lights", "on", 10);
        Brief brief =
                new Brief(car.sheet(), kit.kit(), AnOrder.forWishes(Wish.LAMPS).order());

        Plan plan = new Weigher().weigh(brief).plan();

        assertThat(plan.settings()).containsExactly(new Choice("lamp output", "supply"));
        assertThat(coupling(plan, "lamps")).isEqualTo("coupling.straight");
    }

    private static Brief positiveDoor(AKit kit) {
        AVehicle car = AVehicle.named("cart")
                .withConstantSupply("constant", 20)
                .withIgnition("ignition")
                .door("left")
                .withPositiveTrigger("left-feed", CircuitRole.DOOR_TRIGGER, 10, "left");
        return new Brief(
                car.sheet(), kit.kit(), AnOrder.forWishes().watching("left").order());
    }

    private static List<String> broken(Brief brief, Plan plan) {
        return Prover.prove(brief, plan).results().stream()
                .filter(r -> r.verdict() instanceof Verdict.Broken)
                .map(r -> r.id())
                .toList();
    }

    private static String coupling(Plan plan, String lead) {
        return plan.findHookup(new LeadId(lead)).orElseThrow() instanceof Hookup.Connect connect
                ? connect.coupling()
                : "not connected";
    }

    private static KitOption polarity() {
        return new KitOption(
                "door input polarity",
                List.of(
                        new KitOption.Setting("ground when open", Map.of()),
                        new KitOption.Setting(
                                "supply when open",
                                Map.of(
                                        new LeadId("trigger"),
                                        new Port.Input(
                                                Port.Active.HIGH,
                                                Figured.volts(3),
                                                Figured.volts(5),
                                                Optional.empty(),
                                                Optional.of(Figured.ohms(10_000)),
                                                false)))));
    }
}
