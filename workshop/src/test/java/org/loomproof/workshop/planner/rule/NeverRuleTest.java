package org.loomproof.workshop.planner.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.VehicleFacts;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.planner.Changed;
import org.loomproof.workshop.planner.Planned;

/** What is turned down, and that the rest of the order is planned all the same. */
class NeverRuleTest {

    @ParameterizedTest
    @CsvSource({
        "MANUAL, refuse.remote-start-manual",
        "NOT_SAID, refuse.remote-start-gearbox-not-said",
        "AUTOMATIC, refuse.remote-start-no-hood-switch"
    })
    void remoteStartIsRefusedWithTheReasonOfItsGearbox(VehicleFacts.Gearbox gearbox, String reason) {
        Planned planned = Planned.of(Changed.gearbox(brief(Wish.REMOTE_START, Wish.SIREN), gearbox));

        assertThat(planned.refusal(Wish.REMOTE_START)).contains(reason);
        assertThat(planned.decision("crank")).isEqualTo("cap");
        assertThat(planned.decision("siren")).isEqualTo("connect");
    }

    @Test
    void aPlugForRemoteStartIsNotPluggedInWhateverTheOrderSays() {
        AKit kit =
                AKit.simple().lead("starter-module", LeadRole.REMOTE_START, new Port.ToExtra("starter module"), true);
        for (Wish wish : List.of(Wish.REMOTE_START, Wish.ENGINE_STOP_WHILE_MOVING, Wish.IGNITION_OR_PUMP_CUT)) {
            Brief brief = new Brief(
                    Jobs.handcart().sheet(), kit.kit(), AnOrder.forWishes(wish).order());
            assertThat(Planned.of(brief).decision("starter-module")).isEqualTo("cap");
            assertThat(Planned.of(brief).refusal(wish)).isPresent();
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Wish.class,
            names = {"ENGINE_STOP_WHILE_MOVING", "IGNITION_OR_PUMP_CUT", "TRACKER"})
    void neverGrantedAndAlwaysWithAWayOut(Wish wish) {
        Planned planned = Planned.of(brief(wish, Wish.STARTER_INTERRUPT));

        assertThat(planned.refusal(wish)).isPresent();
        assertThat(planned.decision("interrupt")).isEqualTo("connect");
        assertThat(planned.told()).contains("refused " + wish);
    }

    @Test
    void onTwentyFourVoltsEveryWishIsRefusedAndEveryLeadKept() {
        Planned planned = Planned.of(Changed.systemVoltage(brief(Wish.SIREN, Wish.STARTER_INTERRUPT), 24));

        assertThat(planned.refusal(Wish.SIREN)).contains("refuse.vehicle.not-12-volts");
        assertThat(planned.refusal(Wish.STARTER_INTERRUPT)).contains("refuse.vehicle.not-12-volts");
        assertThat(planned.plan().hookups()).allMatch(Hookup.CapAndKeep.class::isInstance);
    }

    @Test
    void onPositiveGroundEvenAnOrderWithoutWishesIsRefused() {
        Planned planned = Planned.of(Changed.positiveGround(brief()));

        assertThat(planned.refusal(Wish.BASICS)).contains("refuse.vehicle.positive-ground");
        assertThat(planned.plan().parts()).isEmpty();
    }

    @Test
    void aWishThatTheKitHasNothingForIsRefused() {
        Planned planned = Planned.of(brief(Wish.WINDOWS));

        assertThat(planned.refusal(Wish.WINDOWS)).contains("refuse.nothing-for-it");
    }

    private static Brief brief(Wish... wishes) {
        AKit kit = AKit.simple().lowSide("crank", LeadRole.REMOTE_START, 0.5, Set.of(ControllerState.OVERRIDE));
        return new Brief(
                Jobs.handcart().sheet(), kit.kit(), AnOrder.forWishes(wishes).order());
    }
}
