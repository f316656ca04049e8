package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Relay;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.network.solve.SolveOutcome;
import org.loomproof.network.solve.Solver;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.wiring.Situation;

/**
 * One lead of a kit lights the dome, another reads the doors on the same wire: neither sees the other, whatever the controller is
 * at and whichever of its feeds is out, with the door open and closed.
 */
class TwoLeadsOnOneWireTest {

    private static final Path DOME = ExampleFiles.root().resolve("circuits/two-leads-on-one-dome-wire");
    private static final LeadId LIGHT = new LeadId("P1-1");
    private static final LeadId READS = new LeadId("P1-3");
    private static final OperableId DOOR = new OperableId("driver-door");

    /** The kit reads the door as open up to this, and as closed from there on. */
    private static final double LOW_BELOW_VOLTS = 2;

    private static final double HIGH_ABOVE_VOLTS = 4;

    /** The lamp draws 0.7 A lit; the pull-up of an input, 1.5 mA at most, lights nothing. */
    private static final double DARK_AMPS = 2e-3;

    private static final double LIT_AMPS = 0.3;

    /** What a diode across the coil lets through the other way round: at most 50 µA hot, 1N4001 family, read. */
    private static final double LEAKS_AMPS = 50e-6;

    @TempDir
    private Path folder;

    private record Seen(
            Situation at, boolean lights, boolean open, double lamp, double coil, double intoLight, double wire) {}

    private static List<Seen> everything(Brief brief, Plan plan) {
        Vehicle fitted = Vehicle.fitted(brief, plan, Corner.TYPICAL);
        Reach lamp = Objects.requireNonNull(fitted.wired().factory().loads().get(new ElementId("dome-lamp")));
        Reach output = Objects.requireNonNull(
                fitted.wired().controller().orElseThrow().outputs().get(LIGHT));
        List<Seen> all = new ArrayList<>();
        for (ControllerState state : ControllerState.values()) {
            for (ControllerFeed feed : ControllerFeed.values()) {
                for (Moment moment : Moment.values()) {
                    for (SupplyPoint supply : SupplyPoint.values()) {
                        for (String door : List.of("closed", "open")) {
                            Situation at =
                                    new Situation(new TreeMap<>(Map.of(DOOR, door)), supply, state, feed, moment);
                            OperatingPoint point = settled(fitted, at);
                            all.add(new Seen(
                                    at,
                                    feed == ControllerFeed.WHOLE
                                            && brief.kit()
                                                    .behaviour()
                                                    .listOn(state, moment)
                                                    .contains(LIGHT),
                                    door.equals("open"),
                                    Math.abs(point.amps(lamp.part())),
                                    coil(point, fitted),
                                    Math.abs(point.ampsInto(output.part(), output.pin())),
                                    point.volts(Objects.requireNonNull(fitted.wired()
                                                    .controller()
                                                    .orElseThrow()
                                                    .leads()
                                                    .get(READS)))
                                            - point.volts(Node.CHASSIS)));
                        }
                    }
                }
            }
        }
        return all;
    }

    private static OperatingPoint settled(Vehicle fitted, Situation at) {
        return Solver.of(fitted.wired().network()).solve(fitted.settings().of(at))
                        instanceof SolveOutcome.Settled settled
                ? settled.point()
                : fail(at);
    }

    private static OperatingPoint fail(Situation at) {
        throw new IllegalStateException("does not come to rest: " + at);
    }

    private static double coil(OperatingPoint point, Vehicle fitted) {
        return fitted.wired().network().parts().stream()
                .filter(Relay.class::isInstance)
                .map(part -> part.id())
                .mapToDouble((PartId id) -> Math.abs(point.amps(id)))
                .max()
                .orElseThrow();
    }

    @Test
    void neitherSeesTheOtherInAnyState() {
        List<Seen> all = everything(
                ExamplesAreReadTest.brief(DOME), PlannedExamples.job(DOME).plan());

        assertThat(all).anyMatch(Seen::lights).anyMatch(seen -> !seen.lights());
        assertThat(all).allSatisfy(seen -> {
            // The relay follows its output and nothing else: no open door pulls it in.
            assertThat(seen.coil() > 0.05).isEqualTo(seen.lights());
            if (!seen.lights()) {
                assertThat(seen.intoLight()).isLessThan(LEAKS_AMPS);
            }
            // The lamp is lit by the door and by the relay, and by no input that pulls its wire.
            if (seen.open() || seen.lights()) {
                assertThat(seen.lamp()).isGreaterThan(LIT_AMPS);
                assertThat(seen.wire()).isLessThan(LOW_BELOW_VOLTS);
            } else {
                assertThat(seen.lamp()).isLessThan(DARK_AMPS);
                assertThat(seen.wire()).isGreaterThan(HIGH_ABOVE_VOLTS);
            }
        });
    }

    /**
     * The bell: through an input with a diode into the supply the wire feeds a controller that loses its supply while it lights the
     * dome; it wakes, grounds the wire, starves itself, and never comes to rest.
     */
    @Test
    void anInputThatClampsLetsTheWireFeedADeadController() {
        Brief clamping = ReworkedExample.brief(
                DOME,
                folder,
                (file, text) -> file.equals("kit.yaml") ? text.replace("clamps: no", "clamps: yes") : text);
        Plan plan = PlannedExamples.job(DOME).plan();

        assertThatThrownBy(() -> everything(clamping, plan))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("SUPPLY_LOST");
    }
}
