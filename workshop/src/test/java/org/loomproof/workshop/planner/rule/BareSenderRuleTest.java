package org.loomproof.workshop.planner.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.AVehicle;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Figured;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.planner.Planned;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.prover.verdict.ClaimResult;

/** A button or sensor without a plug: what its contact goes to is read, and what a light blow does is never taken for a hard one. */
class BareSenderRuleTest {

    private static final AVehicle CART = AVehicle.named("cart").withConstantSupply("constant", 20);

    @Test
    void aButtonGetsThePoleThatItsInputReads() {
        AKit low = fed().triggerLow("press", LeadRole.OVERRIDE_BUTTON).extra(button());
        AKit high = fed().triggerHigh("press", LeadRole.OVERRIDE_BUTTON).extra(button());

        Planned toBody = Planned.of(CART, low, AnOrder.forWishes(Wish.OVERRIDE_BUTTON));
        toBody.wire("lead press", "S1 1");
        toBody.wire("S1 2", "body");
        assertThat(objections(low, toBody.plan(), Wish.OVERRIDE_BUTTON)).isEmpty();

        Planned toSupply = Planned.of(CART, high, AnOrder.forWishes(Wish.OVERRIDE_BUTTON));
        toSupply.wire("lead press", "S1 1");
        assertThat(toSupply.wires()).noneMatch(wire -> wire.equals("S1 2 - body"));
        assertThat(objections(high, toSupply.plan(), Wish.OVERRIDE_BUTTON)).isEmpty();
    }

    @Test
    void aButtonOnTheWrongPoleIsNotRead() {
        AKit high = fed().triggerHigh("press", LeadRole.OVERRIDE_BUTTON).extra(button());
        Plan plan =
                Planned.of(CART, high, AnOrder.forWishes(Wish.OVERRIDE_BUTTON)).plan();

        Plan wrong = joinedTo(plan, Map.of("2", new End.Body()));

        assertThat(objections(high, wrong, Wish.OVERRIDE_BUTTON)).contains("added-contact-read press worked");
    }

    @Test
    void aSensorThatGivesTheOtherPoleIsTurnedRound() {
        AKit kit = fed().triggerHigh("shock", LeadRole.SENSOR_INPUT).extra(sensor(Extra.Closes.GROUND, false));

        Planned planned = Planned.of(CART, kit, AnOrder.forWishes(Wish.SHOCK_SENSOR));

        assertThat(planned.coupling("shock")).isEqualTo("coupling.reading-buffer");
        assertThat(objections(kit, planned.plan(), Wish.SHOCK_SENSOR)).isEmpty();
    }

    @Test
    void aLightBlowNeverSoundsAtOnce() {
        AKit kit = fed().triggerLow("warns", LeadRole.SENSOR_INPUT)
                .triggerLow("sounds", LeadRole.SENSOR_INPUT)
                .instant("sounds")
                .extra(sensor(Extra.Closes.GROUND, true));
        Planned planned = Planned.of(CART, kit, AnOrder.forWishes(Wish.SHOCK_SENSOR));
        planned.wire("lead warns", "S1 1");
        planned.wire("lead sounds", "S1 2");
        assertThat(objections(kit, planned.plan(), Wish.SHOCK_SENSOR)).isEmpty();

        AddedPart.Sender sensor = planned.only(AddedPart.Sender.class);
        Plan swapped = joinedTo(
                planned.plan(), Map.of("1", new End.OfPart(sensor.id(), "2"), "2", new End.OfPart(sensor.id(), "1")));

        assertThat(objections(kit, swapped, Wish.SHOCK_SENSOR))
                .containsExactly("added-contact-read warns lightly", "added-contact-read sounds lightly");
    }

    @Test
    void ofTwoStagesOneInputReadsTheHardBlow() {
        AKit kit = fed().triggerLow("shock", LeadRole.SENSOR_INPUT).extra(sensor(Extra.Closes.GROUND, true));

        Planned planned = Planned.of(CART, kit, AnOrder.forWishes(Wish.SHOCK_SENSOR));

        planned.wire("lead shock", "S1 2");
        assertThat(objections(kit, planned.plan(), Wish.SHOCK_SENSOR)).isEmpty();
    }

    @Test
    void whatNobodySaysOfAButtonIsNotGuessed() {
        Extra silent = new Extra(
                "button",
                Extra.Kind.OVERRIDE_BUTTON,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        AKit kit = fed().triggerLow("press", LeadRole.OVERRIDE_BUTTON).extra(silent);

        Planned planned = Planned.of(CART, kit, AnOrder.forWishes(Wish.OVERRIDE_BUTTON));

        assertThat(planned.refusal(Wish.OVERRIDE_BUTTON)).contains("refuse.no-plug");
        assertThat(planned.decision("press")).isEqualTo("cap");
    }

    /** The same plan with wires moved that end at those terminals of its one button or sensor. */
    private static Plan joinedTo(Plan plan, Map<String, End> moved) {
        List<AddedWire> wires = plan.wires().stream()
                .map(wire -> new AddedWire(
                        wire.id(),
                        end(plan, wire.from(), moved),
                        end(plan, wire.to(), moved),
                        wire.length(),
                        wire.size()))
                .toList();
        return new Plan(plan.hookups(), plan.parts(), wires, plan.refusals(), plan.cautions());
    }

    private static End end(Plan plan, End end, Map<String, End> moved) {
        return end instanceof End.OfPart(var part, var terminal)
                        && plan.findPart(part).orElseThrow() instanceof AddedPart.Sender
                ? moved.getOrDefault(terminal, end)
                : end;
    }

    private static List<String> objections(AKit kit, Plan plan, Wish wish) {
        Brief brief = new Brief(CART.sheet(), kit.kit(), AnOrder.forWishes(wish).order());
        return Prover.listObjections(brief, plan).stream().map(ClaimResult::id).toList();
    }

    private static AKit fed() {
        return AKit.named("kit").supply("supply").ground("ground");
    }

    private static Extra button() {
        return contact("button", Extra.Kind.OVERRIDE_BUTTON, Extra.Closes.DRY, false);
    }

    private static Extra sensor(Extra.Closes closes, boolean twoStage) {
        return contact("sensor", Extra.Kind.SHOCK_SENSOR, closes, twoStage);
    }

    private static Extra contact(String name, Extra.Kind kind, Extra.Closes closes, boolean twoStage) {
        return new Extra(
                name,
                kind,
                Optional.of(Figured.amps(0.005)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new Extra.Contact(closes, twoStage, Figured.ohms(30))));
    }
}
