package org.loomproof.workshop.planner.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.Behaviour;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.order.Order;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.VehicleFacts;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.AVehicle;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Figured;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.planner.Changed;
import org.loomproof.workshop.planner.Planned;
import org.loomproof.workshop.quantity.Decibels;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.Seconds;

/** An order that names UN R116 gets no louder and no longer sound than that allows, and a hood that is watched. */
class RuleSetRuleTest {

    /** UN R116, 6.3.2.3 and UN R28: 100 to 118 dB(A) at 2 m (read; the upper one in a secondary copy). */
    @ParameterizedTest
    @CsvSource({"119, refused", "118, connect", "100, connect", "99, quiet"})
    void aSounderIsAsLoudAsTheRuleSetAllows(double decibels, String expected) {
        Planned planned = Planned.of(brief(Order.RuleSet.UN_R116, decibels, 28));

        switch (expected) {
            case "refused" -> {
                assertThat(planned.refusal(Wish.SIREN)).contains("refuse.rule-set.loud");
                assertThat(planned.decision("siren")).isEqualTo("cap");
                assertThat(planned.told()).contains("A sounder of 100 dB to 118 dB at 2 m");
            }
            case "quiet" -> assertThat(planned.cautionKeys()).contains("caution.rule-set.quiet");
            default -> {
                assertThat(planned.decision("siren")).isEqualTo("connect");
                assertThat(planned.cautionKeys()).noneMatch(k -> k.startsWith("caution.rule-set"));
            }
        }
    }

    /** Swiss VTS article 86(3), as R116: 25 to 30 s (read). */
    @ParameterizedTest
    @CsvSource({"31, true", "30, false"})
    void anAlarmSoundsNoLongerThanTheRuleSetAllows(double seconds, boolean refused) {
        Planned planned = Planned.of(brief(Order.RuleSet.UN_R116, 110, seconds));

        assertThat(planned.refusal(Wish.SIREN).isPresent()).isEqualTo(refused);
        assertThat(planned.refusal(Wish.HORN).isPresent()).isTrue();
    }

    @Test
    void whereNoRuleSetIsChosenNothingOfItIsAsked() {
        Planned planned = Planned.of(brief(Order.RuleSet.NONE, 125, 180));

        assertThat(planned.decision("siren")).isEqualTo("connect");
        assertThat(planned.cautionKeys()).noneMatch(k -> k.startsWith("caution.rule-set"));
    }

    @Test
    void whatTheKitDoesNotSayIsACaution() {
        Brief brief = with(
                new Brief(
                        Jobs.handcart().sheet(),
                        AKit.simple().kit(),
                        AnOrder.forWishes(Wish.SIREN).order()),
                Order.RuleSet.UN_R116);
        assertThat(Planned.of(brief).cautionKeys())
                .contains("caution.rule-set.time-not-said", "caution.rule-set.sound-not-said");
    }

    @Test
    void aHoodThatNobodyWatchesIsRefusedAndAPinOffered() {
        AVehicle car = Jobs.handcart().opening("bonnet", Operable.Kind.HOOD);
        AKit kit = AKit.simple();
        Brief doorOnly = new Brief(
                car.sheet(),
                kit.kit(),
                AnOrder.forWishes().watching("driver-door").order());
        Brief both = new Brief(
                car.sheet(),
                kit.kit(),
                AnOrder.forWishes().watching("driver-door", "bonnet").order());

        assertThat(Planned.of(with(doorOnly, Order.RuleSet.NONE)).refusal(Wish.WATCH_OPENINGS))
                .isEmpty();
        Planned refused = Planned.of(with(doorOnly, Order.RuleSet.UN_R116));
        assertThat(refused.refusal(Wish.WATCH_OPENINGS)).contains("refuse.rule-set.hood");
        assertThat(refused.told()).contains("A pin switch at the hood");
        assertThat(Planned.of(with(both, Order.RuleSet.UN_R116)).refusal(Wish.WATCH_OPENINGS))
                .isEmpty();
    }

    @Test
    void startingAnAutomaticFromAfarAsksForAHoodSwitchFirst() {
        AVehicle with = Jobs.handcart()
                .opening("bonnet", Operable.Kind.HOOD)
                .withNegativeTrigger("bonnet-lamp", CircuitRole.HOOD_TRIGGER, 5, "bonnet");
        assertThat(remoteStart(Jobs.handcart())).contains("refuse.remote-start-no-hood-switch");
        assertThat(remoteStart(with)).contains("refuse.remote-start-automatic");
    }

    private static Optional<String> remoteStart(AVehicle car) {
        Brief brief = new Brief(
                car.sheet(),
                AKit.simple().kit(),
                AnOrder.forWishes(Wish.REMOTE_START).order());
        return Planned.of(Changed.gearbox(brief, VehicleFacts.Gearbox.AUTOMATIC))
                .refusal(Wish.REMOTE_START);
    }

    /** Worked examples of the inverse-square law: 100 dB at 1 m is 94 at 2 m; 130 at 1 m is 105.9 at 16 m; 105 at 2 m is 91.02 at 10 m. */
    @ParameterizedTest
    @CsvSource({
        "100, 1, 2, 93.9794",
        "130, 1, 16, 105.9176",
        "105, 2, 1, 111.0206",
        "105, 2, 10, 91.0206",
        "100, 2, 50, 72.0412"
    })
    void soundFallsWithDistance(double level, double here, double there, double expected) {
        assertThat(new Decibels(level).at(new Metres(here), new Metres(there)).value())
                .isCloseTo(expected, within(0.0001));
    }

    private static Brief brief(Order.RuleSet ruleSet, double decibels, double seconds) {
        Kit kit = AKit.simple().kit();
        Extra sounder = new Extra(
                "sounder",
                Extra.Kind.SOUNDER,
                Optional.of(Figured.amps(1.2)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(Figure.exactly(new Decibels(decibels), Figured.STATED)));
        Behaviour b = kit.behaviour();
        Behaviour timed = new Behaviour(
                b.armingDelay(),
                b.triggers(),
                b.instantTriggers(),
                b.outputs(),
                Optional.of(Figure.exactly(new Seconds(seconds), Figured.STATED)));
        Kit heard = new Kit(
                kit.name(),
                kit.leastSupply(),
                kit.mostSupply(),
                kit.survives(),
                kit.standby(),
                kit.leads(),
                kit.options(),
                List.of(sounder),
                timed);
        return with(
                new Brief(
                        Jobs.handcart().sheet(),
                        heard,
                        AnOrder.forWishes(Wish.SIREN, Wish.HORN).order()),
                ruleSet);
    }

    private static Brief with(Brief brief, Order.RuleSet ruleSet) {
        Order o = brief.order();
        return new Brief(
                brief.sheet(),
                brief.kit(),
                new Order(
                        o.job(),
                        o.wishes(),
                        o.watched(),
                        o.overridePlace(),
                        ruleSet,
                        o.longestUnusedDays(),
                        o.shop(),
                        Set.copyOf(o.stock())));
    }
}
