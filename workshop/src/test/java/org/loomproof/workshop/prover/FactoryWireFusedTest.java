package org.loomproof.workshop.prover;

import static org.loomproof.workshop.prover.Proven.proven;

import java.util.EnumSet;
import java.util.Optional;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.kit.OutputBehaviour;
import org.loomproof.workshop.brief.kit.OutputTiming;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.APlan;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Figured;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.quantity.Seconds;

/** What added wires bring into a factory wire, whatever outputs are on together. */
class FactoryWireFusedTest {

    private static final String CLAIM = "factory-wire-fused dome";

    /**
     * Two contacts in a row lead from a fuse of 20 A to the lamp's wire. One is closed by a pulse that begins while it arms, the other as
     * long as it is armed: only where the pulse outlasts the arming, of 20 s, are both closed.
     */
    @Test
    void twoContactsThatAreClosedTogetherOnlyByAPulseThatIsLeftAreFound() {
        Assertions.assertThat(proven(twoInARow(5)).notHolding()).doesNotContain(CLAIM);
        Assertions.assertThat(proven(twoInARow(30)).notHolding()).contains(CLAIM);
    }

    private static Jobs.Job twoInARow(double firstSeconds) {
        AKit kit = AKit.named("kit of a pulse")
                .supply("supply")
                .ground("ground")
                .lead("first", LeadRole.WINDOW, pulsed(firstSeconds), false)
                .output(new OutputBehaviour(
                        new LeadId("first"), EnumSet.of(ControllerState.ARMING), OutputTiming.PULSE))
                .lowSide("second", LeadRole.WINDOW, 0.5, EnumSet.of(ControllerState.ARMED));
        Brief brief = new Brief(
                Jobs.handcart().sheet(),
                kit.kit(),
                AnOrder.forWishes(Wish.BASICS).order());
        return new Jobs.Job(
                brief,
                APlan.byHand()
                        .fuse("F1", 5)
                        .fuse("F2", 20)
                        .relay("K1")
                        .relay("K2")
                        .wire("W1", "lead supply", "F1 2")
                        .wire("W2", "F1 1", "circuit constant tap", 0.2, 1)
                        .wire("W3", "lead ground", "body")
                        .wire("W4", "lead first", "K1 85")
                        .wire("W5", "K1 86", "F1 2")
                        .wire("W6", "lead second", "K2 85")
                        .wire("W7", "K2 86", "F1 2")
                        .wire("W8", "F2 1", "circuit constant tap", 0.2, 4)
                        .wire("W9", "F2 2", "K1 30", 0.2, 4)
                        .wire("W10", "K1 87", "K2 30", 0.2, 4)
                        .wire("W11", "K2 87", "circuit dome tap", 0.2, 4)
                        .connect("supply", Wish.BASICS, "constant", "F1", "W1 W2")
                        .connect("ground", Wish.BASICS, "", "", "W3")
                        .connect("first", Wish.BASICS, "constant dome", "K1 F2", "W4 W5 W8 W9 W10")
                        .connect("second", Wish.BASICS, "dome", "K2", "W6 W7 W11")
                        .forKit(kit.kit()));
    }

    private static Port pulsed(double seconds) {
        return new Port.LowSide(
                Figured.amps(0.5),
                Figured.volts(0.3),
                Optional.of(Figure.exactly(new Seconds(seconds), Figured.STATED)),
                false,
                false);
    }
}
