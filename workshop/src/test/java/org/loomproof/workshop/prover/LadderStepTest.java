package org.loomproof.workshop.prover;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.ControllerState;
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
import org.loomproof.workshop.fixture.APlan;
import org.loomproof.workshop.fixture.AVehicle;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Figured;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.fixture.Steps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;

/**
 * A module holds a wire at 5 V through 1 kΩ and tells two buttons apart: the horn by 330 Ω, 5 · 330 / 1330 = 1.24 V, another by
 * 100 Ω, 0.45 V; both together give 0.36 V. A lead must give the horn's step, and not just any low level.
 */
class LadderStepTest {

    private static final String CLAIM = "does-its-work horn module";

    @Test
    void theHornsOwnStepIsMet() {
        Proven.proven(job(330)).holds(CLAIM);
    }

    @Test
    void theOtherButtonsStepIsNotTheHorns() {
        Proven.proven(job(100)).broken(CLAIM);
    }

    /** A third of the way from 1.24 V to 0.45 V is 0.98 V: 1000 · 0.98 / 4.02 = 243 Ω. */
    @Test
    void theStepIsMissedAThirdOfTheWayToTheNext() {
        Proven.proven(job(255)).holds(CLAIM);
        Proven.proven(job(232)).broken(CLAIM);
    }

    private static Jobs.Job job(double ohms) {
        AVehicle car = AVehicle.named("cart")
                .control("horn-button", "off", "pressed")
                .control("other-button", "off", "pressed")
                .withConstantSupply("constant", 20)
                .circuit(
                        "wheel",
                        CircuitRole.HORN,
                        new Level.Voltage(new Volts(5)),
                        new Level.Resistance(new Ohms(330)),
                        List.of("horn-button"),
                        Access.MAY_BE_TAPPED,
                        List.of(Steps.point("line"), Steps.here(), Steps.moduleInput("module", 1000)),
                        List.of(
                                Steps.point("line"),
                                Steps.resistor("horn-step", 330),
                                Steps.contact("horn-contact", "horn-button", "pressed"),
                                Steps.ground()))
                .circuit(
                        "other",
                        CircuitRole.OTHER,
                        new Level.Voltage(new Volts(5)),
                        new Level.Resistance(new Ohms(100)),
                        List.of("other-button"),
                        Access.MAY_BE_TAPPED,
                        List.of(
                                Steps.point("line"),
                                Steps.here(),
                                Steps.resistor("other-step", 100),
                                Steps.contact("other-contact", "other-button", "pressed"),
                                Steps.ground()));
        AKit kit = AKit.named("kit")
                .supply("supply")
                .ground("ground")
                .lead("horn", LeadRole.HORN, output(), false)
                .output(new OutputBehaviour(new LeadId("horn"), Set.of(ControllerState.SOUNDING), OutputTiming.STEADY));
        Brief brief =
                new Brief(car.sheet(), kit.kit(), AnOrder.forWishes(Wish.HORN).order());
        APlan plan = APlan.byHand()
                .wire("W1", "lead supply", "circuit constant tap", 1, 1.5)
                .wire("W2", "lead ground", "body", 1, 1.5)
                .resistor("R1", ohms)
                .wire("W3", "lead horn", "R1 1", 1, 1)
                .wire("W4", "R1 2", "circuit wheel tap", 1, 1)
                .connect("supply", Wish.BASICS, "constant", "", "W1")
                .connect("ground", Wish.BASICS, "", "", "W2")
                .connect("horn", Wish.HORN, "wheel", "R1", "W3 W4");
        return new Jobs.Job(brief, plan.forKit(kit.kit()));
    }

    private static Port output() {
        return new Port.LowSide(Figured.amps(0.5), Figured.volts(0.001), Optional.empty(), false, false);
    }
}
