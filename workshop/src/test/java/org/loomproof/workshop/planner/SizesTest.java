package org.loomproof.workshop.planner;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Order;
import org.loomproof.workshop.brief.order.ShopChoices;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.AVehicle;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Figured;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.fixture.Steps;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.quantity.Celsius;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.weigh.PlannedJob;
import org.loomproof.workshop.weigh.Weigher;

/** Sizes of wires and fuses in whole plans. */
class SizesTest {

    private static AVehicle lamps(double watts) {
        return Jobs.handcart()
                .control("light-switch", "off", "side")
                .withParkingLamps("parking", "light-switch", "side", watts);
    }

    private static AKit strong() {
        return AKit.simple().highSide("lamps", LeadRole.LAMPS, 30, Set.of(ControllerState.SOUNDING));
    }

    private static AKit weak() {
        return AKit.simple().lowSide("lamps", LeadRole.LAMPS, 0.25, Set.of(ControllerState.SOUNDING));
    }

    private static Brief in(Brief brief, double hottest, double run) {
        ShopChoices old = brief.order().shop();
        ShopChoices shop = new ShopChoices(
                old.joint(),
                old.sizes(),
                old.coldest(),
                new Celsius(hottest),
                Optional.empty(),
                Map.of(),
                Figure.exactly(new Metres(run), Figured.STATED));
        return with(brief, shop);
    }

    private static Brief insulated(Brief brief, double bears) {
        ShopChoices shop = brief.order().shop();
        return with(
                brief,
                new ShopChoices(
                        shop.joint(),
                        shop.sizes(),
                        shop.coldest(),
                        shop.hottest(),
                        Optional.of(new Celsius(bears)),
                        shop.runs(),
                        shop.usualRun()));
    }

    private static Brief with(Brief brief, ShopChoices shop) {
        Order o = brief.order();
        return new Brief(
                brief.sheet(),
                brief.kit(),
                new Order(
                        o.job(),
                        o.wishes(),
                        o.watched(),
                        o.overridePlace(),
                        o.ruleSet(),
                        o.longestUnusedDays(),
                        shop,
                        o.stock()));
    }

    private static Brief brief(AVehicle vehicle, AKit kit) {
        return new Brief(
                vehicle.sheet(), kit.kit(), AnOrder.forWishes(Wish.LAMPS).order());
    }

    /**
     * Lamps of 200 W are 200 / 12² · 14.8 = 20.6 A through a lead of 0.75 mm², which bears 17.3 · 0.775 = 13.4 A in air of 60 °C,
     * and the supply lead of that size with it; lamps of 60 W are 6.2 A.
     */
    @ParameterizedTest
    @CsvSource({"200, true", "60, false"})
    void aLeadThatIsTooThinForWhatItCarriesIsSaid(double watts, boolean said) {
        Planned planned = Planned.of(brief(lamps(watts), strong()));

        assertThat(planned.coupling("lamps")).isEqualTo("coupling.straight");
        assertThat(planned.cautionKeys().contains("caution.lead-too-thin")).isEqualTo(said);
        assertThat(planned.told().contains("Lead supply would carry 20.6 A")).isEqualTo(said);
    }

    /**
     * A horn of 1.9 A works by a relay behind 2 A of our own, and half a square millimetre would bear that. While the car's own
     * switch is closed a chafed wire is drawn through the car's fuse as well, and behind 20 A wants 2.5 mm².
     */
    @ParameterizedTest
    @CsvSource({"20, 2.5", "10, 1", "5, 0.5"})
    void whatMeetsAWireThatTheCarFeedsIsThickEnoughForTheCarsFuse(double fuse, double size) {
        AVehicle car = Jobs.handcart().control("button", "off", "pressed");
        car.circuit(
                "horn-wire",
                CircuitRole.HORN,
                new Level.Ground(),
                new Level.Supply(),
                List.of("button"),
                Access.MAY_BE_TAPPED,
                List.of(List.of(
                        Steps.supply(),
                        Steps.fuse("horn-fuse", fuse),
                        Steps.contact("button-contact", "button", "pressed"),
                        Steps.here(),
                        Steps.electronic("horn", 8),
                        Steps.ground())));
        AKit kit = AKit.simple().lowSide("horn", LeadRole.HORN, 0.25, Set.of(ControllerState.SOUNDING));

        PlannedJob job = new Weigher()
                .weigh(new Brief(
                        car.sheet(), kit.kit(), AnOrder.forWishes(Wish.HORN).order()));

        assertThat(job.plan().findHookup(new LeadId("horn")).orElseThrow())
                .isInstanceOfSatisfying(
                        Hookup.Connect.class,
                        connect -> assertThat(connect.coupling()).isEqualTo("coupling.relay"));
        assertThat(job.proof().results()).noneMatch(result -> result.verdict() instanceof Verdict.Broken);
        assertThat(job.plan().wires())
                .filteredOn(wire -> wire.to().equals(new End.Tap(new CircuitId("horn-wire")))
                        || wire.to().toString().contains("terminal=87]"))
                .hasSize(2)
                .allSatisfy(wire -> assertThat(wire.size().value()).isEqualTo(size));
    }

    /** A sounder of 16 A on an output to ground: lead and ground lead of 0.75 mm² bear 13.4 A. */
    @Test
    void theGroundLeadCarriesWhatTheControllerSinks() {
        AKit kit = AKit.named("sinking kit")
                .supply("supply")
                .ground("ground")
                .lowSide("siren", LeadRole.SIREN, 30, Set.of(ControllerState.SOUNDING))
                .extra(new Extra(
                        "great sounder",
                        Extra.Kind.SOUNDER,
                        Optional.of(Figured.amps(16)),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));
        Planned planned = Planned.of(new Brief(
                Jobs.handcart().sheet(),
                kit.kit(),
                AnOrder.forWishes(Wish.SIREN).order()));

        assertThat(planned.coupling("siren")).isEqualTo("coupling.added-load");
        assertThat(planned.told()).contains("Lead ground would carry 16 A").contains("Lead siren would carry 16 A");
    }

    /**
     * Lamps of 40 W take 4.1 A, 7.8 A with their cold filaments: over 0.75 a fuse of 15 A. In air of 60 °C that asks for 1.5 mm²
     * by the trade's ceiling and for 2.5 mm² by what it bears: 25.7 · 0.775 = 19.9 A, less than 1.35 · 15 A.
     */
    @ParameterizedTest
    @CsvSource({"20, 1.5", "60, 2.5"})
    void inAHotCarTheWireBehindAFuseIsThicker(double hottest, double size) {
        Planned planned = Planned.of(in(brief(lamps(40), weak()), hottest, 1.5));
        AddedPart.Fuse fuse = (AddedPart.Fuse) planned.part("FU2");

        assertThat(fuse.rating().value()).isEqualTo(15);
        assertThat(planned.wire("circuit constant tap", "FU2 1").size().value()).isEqualTo(size);
    }

    /**
     * The same in air of 60 °C by the class of insulation, 33 CFR 183.425 table 5 (read). At 125 °C 1.5 mm² bears 31 A in air of
     * 30 °C and √(65 / 95) = 0.83 of it in 60 °C: 25.6 A, more than 1.35 · 15 A. At 80 °C 2.5 mm² bears 27 A and 0.63 of it.
     */
    @ParameterizedTest
    @CsvSource({"80, 4", "105, 2.5", "125, 1.5"})
    void theClassOfTheInsulationDecidesTheSizeBehindAFuse(int insulation, double size) {
        Planned planned = Planned.of(insulated(in(brief(lamps(40), weak()), 60, 1.5), insulation));

        assertThat(planned.wire("circuit constant tap", "FU2 1").size().value()).isEqualTo(size);
    }

    /** Behind 15 A twice that must flow in a short: 11.6 V / 30 A = 0.387 Ω, which 91 m of 6 mm² leave and 200 m do not. */
    @ParameterizedTest
    @CsvSource({"1.5, false", "200, true"})
    void aShortThatMayNotOpenItsFuseIsSaid(double run, boolean said) {
        Planned planned = Planned.of(in(brief(lamps(40), weak()), 20, run));

        assertThat(planned.cautionKeys().contains("caution.short-too-weak")).isEqualTo(said);
    }

    /** 33 CFR 183.455(b) gives a boat's fuse 7 inches (178 mm); common practice 150 to 300 mm. */
    @Test
    void everyFuseStandsNearItsTakeOff() {
        Planned planned = Planned.of(brief(lamps(40), weak()));
        for (String fuse : Set.of("FU1", "FU2")) {
            assertThat(planned.wire("circuit constant tap", fuse + " 1")
                            .length()
                            .value())
                    .isLessThanOrEqualTo(0.178);
        }
    }
}
