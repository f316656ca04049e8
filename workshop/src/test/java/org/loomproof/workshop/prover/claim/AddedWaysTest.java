package org.loomproof.workshop.prover.claim;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.fixture.APlan;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.wiring.Corner;

/** From where what is added can bring current into a factory wire. */
class AddedWaysTest {

    private static final Brief HANDCART = Jobs.simple().brief();
    private static final AddedPartId BETWEEN = new AddedPartId("D1");

    /** Its band towards the supply: a rectifier keeps the current out, a zener lets it through from its volts on. */
    @Test
    void currentComesBackwardsThroughAZenerAndNotThroughARectifier() {
        assertThat(isFed(new AddedPart.Diode(BETWEEN, new Amps(1), new Volts(400)), "K", "A"))
                .isFalse();
        assertThat(isFed(new AddedPart.Zener(BETWEEN, new Amps(0.4), new Volts(12)), "K", "A"))
                .isTrue();
    }

    /** Its band towards the wire: both let it through. */
    @Test
    void currentComesForwardsThroughBoth() {
        assertThat(isFed(new AddedPart.Diode(BETWEEN, new Amps(1), new Volts(400)), "A", "K"))
                .isTrue();
        assertThat(isFed(new AddedPart.Zener(BETWEEN, new Amps(0.4), new Volts(12)), "A", "K"))
                .isTrue();
    }

    /** Whether the dome lamp's wire can be fed through the part from the constant supply. */
    private static boolean isFed(AddedPart part, String atSupply, String atWire) {
        Plan plan = APlan.byHand()
                .part(part)
                .wire("W1", "circuit constant tap", "D1 " + atSupply)
                .wire("W2", "D1 " + atWire, "circuit dome tap")
                .forKit(HANDCART.kit());
        Fitting fitting = new Fitting(
                HANDCART,
                plan,
                Vehicle.stock(HANDCART, Corner.TYPICAL),
                Vehicle.fitted(HANDCART, plan, Corner.TYPICAL));
        return new AddedWays(fitting).canBring(new End.Tap(new CircuitId("dome")));
    }
}
