package org.loomproof.workshop.prover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Kit;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.kit.OutputBehaviour;
import org.loomproof.workshop.brief.kit.OutputTiming;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.APlan;
import org.loomproof.workshop.fixture.AVehicle;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Figured;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.prover.verdict.ClaimResult;

/**
 * A horn's relay of 85 Ω on the constant supply, worked by an output to ground, and the controller without its supply. At 14.8 V the
 * coil's current goes through the output's clamp, 0.8 V, into the controller, which is a resistance by what it draws asleep. At -20 °C
 * the coil has 85 Ω · (1 - 0.00393 · 40) = 71.6 Ω, and lets in most.
 */
class StaysDeadTest {

    private static final String DEAD = "stays-dead horn";

    /** The controller's ohms R: it sees (14.8 - 0.8) V · R / (R + 71.6 Ω). */
    private static double seenByHand(double standbyAmps) {
        double ohms = 12.6 / standbyAmps;
        return 14.0 * ohms / (ohms + 71.6);
    }

    /** Asleep at 12 mA it is 1050 Ω: 12.5 mA come through the coil, and it sees 13 V. */
    @Test
    void aCoilKeepsAControllerAliveThroughTheClamp() {
        assertThat(seenByHand(0.012)).isCloseTo(13.1, within(0.01));
        Proven.proven(job(true, 0.012)).broken(DEAD);
    }

    /** It is left 5 V where it draws 0.317 A: 39.8 Ω of 111 Ω. */
    @Test
    void theVerdictFlipsWhereTheControllerIsLeftFiveVolts() {
        assertThat(seenByHand(0.3168)).isCloseTo(5.0, within(0.01));
        Proven.proven(job(true, 0.3168 * 0.95)).broken(DEAD);
        Proven.proven(job(true, 0.3168 * 1.05)).holds(DEAD);
    }

    @Test
    void anOutputWithoutAClampLetsNothingIn() {
        assertThat(Prover.prove(job(false, 0.012).brief(), job(false, 0.012).plan())
                        .results())
                .extracting(ClaimResult::id)
                .doesNotContain(DEAD);
    }

    private static Jobs.Job job(boolean clamp, double standbyAmps) {
        AVehicle car = AVehicle.named("cart")
                .control("horn-button", "off", "pressed")
                .withConstantSupply("constant", 20)
                .withHornToGround("wire", "horn-button", 4);
        Port output = new Port.LowSide(Figured.amps(0.5), Figured.volts(0.1), Optional.empty(), false, clamp);
        Kit given = AKit.named("kit")
                .supply("supply")
                .ground("ground")
                .lead("horn", LeadRole.HORN, output, false)
                .output(new OutputBehaviour(
                        new LeadId("horn"), Set.of(ControllerState.SOUNDING), OutputTiming.FLASHING))
                .kit();
        Kit kit = new Kit(
                given.name(),
                given.leastSupply(),
                given.mostSupply(),
                given.survives(),
                Figured.amps(standbyAmps),
                given.leads(),
                given.options(),
                given.extras(),
                given.behaviour());
        APlan plan = APlan.byHand()
                .wire("W1", "lead supply", "circuit constant tap", 1, 1.5)
                .wire("W2", "lead ground", "body", 1, 1.5)
                .fuse("F1", 2)
                .relay("K1")
                .diode("D1", 1)
                .wire("W3", "circuit constant tap", "F1 1", 0.1, 1)
                .wire("W4", "F1 2", "K1 86", 0.5, 1)
                .wire("W5", "lead horn", "K1 85", 0.5, 1)
                .wire("W6", "K1 30", "circuit wire tap", 0.5, 1.5)
                .wire("W7", "K1 87", "body", 0.1, 1.5)
                .wire("W8", "D1 A", "K1 85", 0.1, 1)
                .wire("W9", "D1 K", "K1 86", 0.1, 1)
                .connect("supply", Wish.BASICS, "constant", "", "W1")
                .connect("ground", Wish.BASICS, "", "", "W2")
                .connect("horn", Wish.HORN, "wire", "F1 K1 D1", "W3 W4 W5 W6 W7 W8 W9");
        return new Jobs.Job(
                new Brief(car.sheet(), kit, AnOrder.forWishes(Wish.HORN).order()), plan.forKit(kit));
    }
}
