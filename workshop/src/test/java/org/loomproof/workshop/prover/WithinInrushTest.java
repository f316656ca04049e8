package org.loomproof.workshop.prover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.loomproof.workshop.prover.Proven.proven;

import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Lamp;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Switch;
import org.loomproof.network.time.TimeOptions;
import org.loomproof.network.time.TimeOutcome;
import org.loomproof.network.time.TimeSolver;
import org.loomproof.network.time.Timeline;
import org.loomproof.network.time.Trace;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.APlan;
import org.loomproof.workshop.fixture.Altered;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.inrush.Inrush;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Situation;

/** Cold filaments behind contacts, fuses and outputs that bear them for long, and what they bear at first. */
class WithinInrushTest {

    /** Parking lamps of 40 W, rated at 13.5 V: 4.556 Ω hot, 0.08 of that cold. */
    private static final double COLD_OHMS = 0.08 * 13.5 * 13.5 / 40;

    private static final String PARTS = "within-inrush from F1";

    /**
     * Hand-worked: 40 W carry 3.1 A for long, which a contact of 10 A bears. Cold they are 0.365 Ω; at 14.8 V, before less than
     * 0.06 Ω of wires, fuse and contacts, that is at least 34.9 A, and no more than 40.6 A. Such a contact makes 10 · 120/35 = 34.3 A.
     */
    @Test
    void aContactThatBearsLampsForLongMayWeldOnTheirColdFilaments() {
        Proven proven = proven(vanWithLampRelay(10));
        proven.holds("within-rating K2 87");
        Verdict.Broken broken = proven.broken(PARTS);
        double amps = 34.3 * (1 - broken.worst().slack() / 100);
        assertThat(amps).isBetween(14.8 / (COLD_OHMS + 0.06), 14.8 / COLD_OHMS);
        assertThat(proven.steps(PARTS)).contains("make it sound");
    }

    /** The same lamps behind a contact of 40 A, which makes 137 A; tightest is then their fuse of 7.5 A, which bears 7.5 · 7.8 = 58.5 A,
     * where filaments are cold at -20 °C and have 0.8386 of their ohms at 20 °C. */
    @Test
    void aContactForLampsHolds() {
        Verdict.Holds holds = proven(vanWithLampRelay(40)).holds(PARTS);
        assertThat(holds.tightest().slack())
                .isBetween(100 - 100 * 40.6 / 0.8386 / 58.5, 100 - 100 * 34.9 / 0.8386 / 58.5);
    }

    /** A second way: the van run in time, its filaments warming up; what the lamps' fuse carries at the most is the claim's figure. */
    @Test
    void aRunInTimeRushesAsMuch() {
        Jobs.Job van = vanWithLampRelay(10);
        Vehicle fitted = Vehicle.fitted(van.brief(), van.plan(), Corner.TYPICAL);
        PartId fuse = Objects.requireNonNull(fitted.wired().added().parts().get(new AddedPartId("F3")))
                .part();
        Setting armed = fitted.settings().of(at(ControllerState.ARMED));
        Setting sounding = fitted.settings().of(at(ControllerState.SOUNDING));
        Trace trace = trace(TimeSolver.of(fitted.wired().network())
                .run(Timeline.settled(armed).then(0.01, was -> sounding), 0.4));
        double coil = 14.8 / 85;
        double claimed = 34.3 * (1 - proven(van).broken(PARTS).worst().slack() / 100);
        assertThat(most(trace, fuse) - coil).isCloseTo(claimed, within(0.02 * claimed));
        assertThat(Math.abs(trace.amps(fuse, 0.4))).isLessThan(0.25 * claimed);
    }

    private static double most(Trace trace, PartId part) {
        return Math.max(
                trace.ampsExtremes(part).greatest(), -trace.ampsExtremes(part).least());
    }

    private static Trace trace(TimeOutcome outcome) {
        return ((TimeOutcome.Finished) outcome).trace();
    }

    private static Situation at(ControllerState state) {
        return new Situation(new TreeMap<>(), SupplyPoint.HIGH, state, ControllerFeed.WHOLE);
    }

    /**
     * An output that its maker made for lamps bears ten times its rating at first: of 5 A that is 50 A. Of any other nobody says
     * more than what it bears for long; whether it bears the lamps is for its maker to say.
     */
    @Test
    void anOutputThatIsNotForLampsIsAskedAbout() {
        proven(lampsStraight(LeadRole.LAMPS)).holds("within-inrush lamps");
        Proven other = proven(lampsStraight(LeadRole.OTHER));
        other.holds("within-rating lamps");
        assertThat(other.open("within-inrush lamps").settledBy())
                .singleElement()
                .satisfies(ask -> assertThat(ask.name()).isEqualTo("figure-of inrush-of lamps"));
    }

    /** Nothing draws more at first than for long where there is no filament and no motor. */
    @Test
    void whereNothingRushesNothingIsClaimed() {
        Jobs.Job cart = Jobs.simple();
        assertThat(proven(cart).proof().results())
                .noneMatch(result -> result.id().startsWith("within-inrush interrupt"));
    }

    /** 120 A by a contact of 35 A (Omron G8JN, read), 30 A for 8.3 ms by a diode of 1 A (1N4001, read), made 50 ms by equal heat. */
    @Test
    void whatIsBorneAtFirstIsThatOfPublishedSheets() {
        assertThat(Inrush.CONTACT.most(new Amps(35)).value()).isCloseTo(120, within(0.1));
        assertThat(Inrush.DIODE.most(new Amps(1)).value()).isCloseTo(30 * Math.sqrt(8.3 / 50), within(0.05));
    }

    /**
     * A fuse is heated by amps squared. What a filament of the engine draws beyond its lasting current is as much as its first
     * current for 4 ms. The earliest that a blade fuse opens, 0.04 s at 3.5 times its rating (ISO 8820-3, from memory), is as much
     * as 11 times for 4 ms; what it is let bear is stricter than that.
     */
    @Test
    void aFuseIsLetBearLessThanAFilamentsRushWouldNeedToOpenIt() {
        PartId lamp = new PartId("lamp");
        PartId contact = new PartId("contact");
        Network network = Network.builder()
                .add(new Battery(new PartId("battery"), new Node("plus"), Node.CHASSIS, 13.5, 1e-6))
                .add(new Switch(contact, new Node("plus"), new Node("lamp"), 1e-3))
                .add(new Lamp(lamp, new Node("lamp"), Node.CHASSIS, 13.5, 21))
                .build();
        double end = 1.5;
        Trace trace = trace(TimeSolver.of(network)
                .run(
                        Timeline.fromNothing(network.atRest()).then(0.01, s -> s.closed(contact)),
                        end,
                        TimeOptions.USUAL));
        double first = trace.ampsExtremes(lamp).greatest();
        double lasting = trace.amps(lamp, end);
        double heat = 0;
        double step = 1e-5;
        for (double t = 0.01 + step / 2; t < end; t += step) {
            heat += (Math.pow(trace.amps(lamp, t), 2) - lasting * lasting) * step;
        }
        assertThat(heat / (first * first)).isBetween(0.002, 0.004);
        assertThat(Inrush.FUSE.most(new Amps(10)).value()).isLessThan(10 * 3.5 * Math.sqrt(0.04 / 0.004));
    }

    private static Jobs.Job vanWithLampRelay(double makeAmps) {
        AddedPart relay = new AddedPart.Relay(
                new AddedPartId("K2"), new Ohms(85), new Volts(8), new Volts(1.2), new Amps(makeAmps), new Amps(10));
        Jobs.Job van = Jobs.vanJob();
        return van.with(Altered.part(van.plan(), relay));
    }

    /** The handcart with parking lamps of 40 W straight on an output of 5 A. */
    private static Jobs.Job lampsStraight(LeadRole role) {
        Kit kit = AKit.simple()
                .highSide("lamps", role, 5, Set.of(ControllerState.SOUNDING))
                .kit();
        Brief brief = new Brief(
                Jobs.handcart()
                        .control("light-switch", "off", "side")
                        .withParkingLamps("parking", "light-switch", "side", 40)
                        .sheet(),
                kit,
                AnOrder.forWishes(Wish.STARTER_INTERRUPT, Wish.SIREN, Wish.LAMPS)
                        .watching("driver-door")
                        .order());
        APlan plan = Jobs.simplePlan()
                .wire("W30", "lead lamps", "circuit parking tap", 1, 1.5)
                .connect("lamps", Wish.LAMPS, "parking", "", "W30");
        return new Jobs.Job(brief, plan.forKit(kit));
    }
}
