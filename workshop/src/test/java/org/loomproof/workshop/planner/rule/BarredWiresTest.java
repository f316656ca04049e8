package org.loomproof.workshop.planner.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.Switching;
import org.loomproof.workshop.brief.sheet.VehicleFacts;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.planner.Changed;
import org.loomproof.workshop.planner.Planned;
import org.loomproof.workshop.trade.colour.Colour;

/** Wires that are not joined or not cut, each with the nearest safe way on. */
class BarredWiresTest {

    private static final Switching MESSAGES = new Switching(new Level.Data(), new Level.Data());

    private static Brief brief(Wish... wishes) {
        AKit kit = AKit.simple().lowSide("lamps", LeadRole.LAMPS, 0.25, Set.of(ControllerState.SOUNDING));
        return new Brief(
                Jobs.van().sheet(), kit.kit(), AnOrder.forWishes(wishes).order());
    }

    @Test
    void aWireInAConnectorOfTheRestraintsIsRefusedAndAnotherPlaceOffered() {
        Brief near = Changed.place(brief(Wish.LAMPS), "parking", "left sill", "C7", "2");
        Brief restraint = Changed.role(
                Changed.place(near, "trunk-lamp", "left sill", "C7", "5"), "trunk-lamp", CircuitRole.RESTRAINT);

        assertThat(Planned.of(near).decision("lamps")).isEqualTo("connect");
        Planned planned = Planned.of(restraint);
        assertThat(planned.refusal(Wish.LAMPS)).contains("refuse.restraint-loom");
        assertThat(planned.decision("lamps")).isEqualTo("cap");
        assertThat(planned.told()).contains("away from the yellow loom");
    }

    @ParameterizedTest
    @EnumSource(
            value = VehicleFacts.Drive.class,
            names = {"HYBRID", "ELECTRIC"})
    void anOrangeWireIsLeftAloneInAnElectricCarAndNotInAnother(VehicleFacts.Drive drive) {
        Brief orange = Changed.colour(brief(Wish.LAMPS), "parking", Colour.ORANGE);

        assertThat(Planned.of(orange).decision("lamps")).isEqualTo("connect");
        Planned planned = Planned.of(Changed.drive(orange, drive));
        assertThat(planned.refusal(Wish.LAMPS)).contains("refuse.high-voltage-loom");
        assertThat(planned.told()).contains("on the 12 V side");
    }

    @Test
    void aYellowWireThatIsJoinedIsWarnedOf() {
        Brief yellow = Changed.colour(brief(Wish.LAMPS), "parking", Colour.YELLOW);

        assertThat(Planned.of(yellow).cautionKeys()).contains("caution.yellow-wire");
        assertThat(Planned.of(brief(Wish.LAMPS)).cautionKeys()).doesNotContain("caution.yellow-wire");
    }

    @Test
    void twoWiresOfOneColourInOneLoomAreWarnedOf() {
        Brief alike =
                Changed.colour(Changed.colour(brief(Wish.LAMPS), "parking", Colour.GREY), "ignition", Colour.GREY);
        Brief apart = Changed.place(
                Changed.place(alike, "parking", "kick panel", "C1", "1"), "ignition", "column", "C2", "1");
        Brief together = Changed.place(apart, "ignition", "kick panel", "C1", "9");

        assertThat(Planned.of(apart).cautionKeys()).doesNotContain("caution.same-colour");
        assertThat(Planned.of(together).cautionKeys()).contains("caution.same-colour");
    }

    @Test
    void aCircuitOfMessagesIsRefusedWhenTheKitHasNoModuleForIt() {
        Planned planned = Planned.of(Changed.switching(brief(Wish.LAMPS), "parking", MESSAGES));

        assertThat(planned.refusal(Wish.LAMPS)).contains("refuse.data-only");
        assertThat(planned.told()).contains("interface module made for that bus");
    }

    /** One paper alone: hold, with the reading that settles it. A meter, or a second paper on the same cavity: cut. */
    @Test
    void aStarterWireIsCutByTwoPiecesOfEvidence() {
        Brief verified = Changed.place(brief(Wish.STARTER_INTERRUPT), "starter", "column", "C3", "4");
        Brief stated = Changed.certainty(verified, "starter", Certainty.STATED);

        assertThat(Planned.of(verified).decision("interrupt")).isEqualTo("connect");
        Planned held = Planned.of(stated);
        assertThat(held.decision("interrupt")).isEqualTo("levels-of starter");
        assertThat(held.reason("interrupt")).contains("a wire is cut by two");
        assertThat(Planned.of(Changed.saidAgain(stated, "starter", "starter-too", "fixture"))
                        .decision("interrupt"))
                .isEqualTo("levels-of starter");
        Planned twice = Planned.of(Changed.saidAgain(stated, "starter", "starter-too", "a second paper"));
        assertThat(twice.decision("interrupt")).isEqualTo("connect");
        assertThat(twice.insteadOf("interrupt")).anyMatch(r -> r.contains("starter-too"));
    }

    @Test
    void twoPapersThatDisagreeAboutACavityHoldTheLead() {
        Brief stated = Changed.certainty(
                Changed.place(brief(Wish.STARTER_INTERRUPT), "starter", "column", "C3", "4"),
                "starter",
                Certainty.STATED);
        Brief twice = Changed.switching(
                Changed.saidAgain(stated, "starter", "starter-too", "a second paper"),
                "starter-too",
                new Switching(new Level.Supply(), new Level.Ground()));

        Planned planned = Planned.of(twice);
        assertThat(planned.decision("interrupt")).startsWith("levels-of starter");
        assertThat(planned.reason("interrupt")).contains("contradicts itself");
    }

    /** 14.8 V over the 100 Ω of the weakest coil are 148 mA; an output of 50 mA works neither the lamps nor any coil. */
    @Test
    void anOutputTooWeakForAnyCoilWorksABuffer() {
        AKit kit = AKit.simple().lowSide("lamps", LeadRole.LAMPS, 0.05, Set.of(ControllerState.SOUNDING));
        Planned planned = Planned.of(new Brief(
                Jobs.van().sheet(), kit.kit(), AnOrder.forWishes(Wish.LAMPS).order()));

        assertThat(planned.refusal(Wish.LAMPS)).isEmpty();
        assertThat(planned.listParts(AddedPart.Buffer.class)).hasSize(1);
        assertThat(planned.listParts(AddedPart.Relay.class)).isNotEmpty();
    }

    @Test
    void whatIsGuessedOrMayOnlyBeTappedIsNotCut() {
        Brief brief = brief(Wish.STARTER_INTERRUPT);
        Planned guessed = Planned.of(Changed.certainty(brief, "starter", Certainty.GUESSED));
        Planned tapped = Planned.of(Changed.access(brief, "starter", Access.MAY_BE_TAPPED));

        assertThat(guessed.decision("interrupt")).isEqualTo("levels-of starter");
        assertThat(guessed.reason("interrupt")).contains("a guess is not enough to cut a wire");
        assertThat(tapped.decision("interrupt")).isEqualTo("access-to starter");
        assertThat(tapped.reason("interrupt")).contains("may be tapped but not cut");
    }
}
