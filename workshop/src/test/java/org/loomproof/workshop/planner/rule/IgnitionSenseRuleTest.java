package org.loomproof.workshop.planner.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.sheet.Access;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.fixture.AKit;
import org.loomproof.workshop.fixture.AVehicle;
import org.loomproof.workshop.fixture.AnOrder;
import org.loomproof.workshop.fixture.Steps;
import org.loomproof.workshop.planner.Planned;

/** Which feed of the key tells the controller that it is on. */
class IgnitionSenseRuleTest {

    private static AVehicle withSecond(AVehicle car, PathStep... key) {
        List<PathStep> path = new java.util.ArrayList<>(List.of(Steps.supply(), Steps.fuse("second-fuse", 15)));
        path.addAll(List.of(key));
        path.addAll(List.of(Steps.here(), Steps.electronic("second-box", 8), Steps.ground()));
        return car.circuit(
                "second",
                CircuitRole.SECOND_IGNITION,
                new Level.Ground(),
                new Level.Supply(),
                List.of("key"),
                Access.MAY_BE_TAPPED,
                path);
    }

    private static AVehicle cart() {
        return AVehicle.named("cart").withConstantSupply("constant", 20);
    }

    private static Planned plan(AVehicle car) {
        return Planned.of(car, AKit.simple().triggerHigh("sense", LeadRole.IGNITION_SENSE), AnOrder.forWishes());
    }

    /** What falls while the starter turns would tell the controller that the key is out. */
    @ParameterizedTest
    @CsvSource({"on start, connect", "on, find ignition", "accessory on, find ignition", "start, find ignition"})
    void aSecondIgnitionByItselfServesWhereItHoldsWhileCranking(String closedAt, String decision) {
        PathStep key = Steps.contact("second-switch", "key", closedAt.split(" ", -1));

        assertThat(plan(withSecond(cart(), key)).decision("sense")).isEqualTo(decision);
    }

    @ParameterizedTest
    @CsvSource({"true, ignition", "false, second"})
    void theFirstIgnitionIsTakenWhereBothAreThere(boolean first, String circuit) {
        AVehicle car = withSecond(cart(), Steps.contact("second-switch", "key", "on", "start"));

        assertThat(plan(first ? car.withIgnition("ignition") : car)
                        .connect("sense")
                        .circuits())
                .hasToString("[" + circuit + "]");
    }
}
