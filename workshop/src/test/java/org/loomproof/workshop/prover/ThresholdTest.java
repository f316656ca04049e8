package org.loomproof.workshop.prover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.fixture.AVehicle;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.fixture.Steps;

/** One stock resistance is moved until a verdict flips; where it flips was worked out by hand. */
class ThresholdTest {

    /**
     * A door wire that meets the body through a resistance R, on an input pulled up to the battery through 10 kΩ and read low
     * up to 2 V. At the highest supply point, 14.8 V: 14.8 · R / (R + 10 000) = 2, so R = 20 000 / 12.8 = 1562.5 Ω. The 12 mA of
     * the controller's own supply lead lose less than 2 mV, which is left out.
     */
    @Test
    void anOpenDoorIsSeenUpToTheResistanceWorkedOutByHand() {
        assertThat(isSeen(1550)).isTrue();
        assertThat(isSeen(1575)).isFalse();
        double low = 100;
        double high = 10_000;
        while (high - low > 0.1) {
            double middle = (low + high) / 2;
            if (isSeen(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        assertThat(low).isCloseTo(1562.5, within(1.0));
    }

    private static boolean isSeen(double ohms) {
        Jobs.Job job = Jobs.simple();
        AVehicle vehicle = AVehicle.named("bare cart")
                .door("driver-door")
                .withConstantSupply("constant", 20)
                .withIgnition("ignition")
                .withStarter("starter", 1.2)
                .circuit(
                        "dome",
                        CircuitRole.DOOR_TRIGGER,
                        new Level.Open(),
                        new Level.Ground(),
                        List.of("driver-door"),
                        Access.MAY_BE_TAPPED,
                        List.of(
                                Steps.here(),
                                Steps.resistor("joint", ohms - 0.05),
                                Steps.pinSwitch("driver-door-pin", "driver-door"),
                                Steps.ground()));
        Brief brief = new Brief(vehicle.sheet(), job.brief().kit(), job.brief().order());
        return Prover.listObjections(brief, job.plan()).stream()
                .noneMatch(result -> result.id().equals("opening-seen driver-door"));
    }
}
