package org.loomproof.workshop.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.network.solve.Solver;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.trade.supply.SupplyPoint;

class VehicleWiringTest {

    /** Hand-worked sums leave out the millivolts of posts and joints. */
    private static final double HAND_VOLTS = 0.02;

    @Test
    void theStarterOfTheStockHandcartGetsWhatSwitchAndWireLeaveIt() {
        Car car = Car.stock(Jobs.simple());
        OperatingPoint point = car.solve(situation(ControllerState.DISARMED, ControllerFeed.WHOLE, "key", "start"));
        // 12.6 V over 10 mΩ of contact, 10 mΩ of wire and 1.2 Ω of solenoid: 12.6 · 1.2 / 1.22
        assertThat(car.voltsAcross(point, "starter-solenoid")).isCloseTo(12.393, within(1e-3));
    }

    @Test
    void anArmedControllerOpensTheStarterAndADisarmedOneDoesNot() {
        Car car = Car.fitted(Jobs.simple());
        OperatingPoint armed = car.solve(situation(ControllerState.ARMED, ControllerFeed.WHOLE, "key", "start"));
        assertThat(car.voltsAcross(armed, "starter-solenoid")).isCloseTo(0, within(1e-6));
        // The coil of 85 Ω between ignition and the output of 0.3 V at 0.5 A: 12.6 / (85 + 0.6) = 147 mA, less the drop
        // on
        // the ignition's own feed: 2.5 A through some 30 mΩ.
        Reach coil = Objects.requireNonNull(car.wired.added().parts().get(new AddedPartId("K1")));
        assertThat(armed.amps(coil.part())).isCloseTo(0.147, within(0.002));

        OperatingPoint disarmed = car.solve(situation(ControllerState.DISARMED, ControllerFeed.WHOLE, "key", "start"));
        assertThat(car.voltsAcross(disarmed, "starter-solenoid")).isBetween(12.2, 12.4);
    }

    @Test
    void aControllerWithoutSupplyLetsTheEngineStart() {
        Car car = Car.fitted(Jobs.simple());
        for (ControllerFeed feed :
                new ControllerFeed[] {ControllerFeed.SUPPLY_LOST, ControllerFeed.GROUND_LOST, ControllerFeed.FUSE_OUT
                }) {
            OperatingPoint point = car.solve(situation(ControllerState.ARMED, feed, "key", "start"));
            assertThat(car.voltsAcross(point, "starter-solenoid"))
                    .as(feed.word())
                    .isBetween(12.2, 12.4);
        }
    }

    /** Trade practice, no published source: an input behind an isolation diode reads about 0.60 V with the door open. */
    @Test
    void anOpenDoorReadsADiodeDropThroughItsIsolationDiode() {
        Car car = Car.fitted(Jobs.vanJob());
        OperatingPoint open =
                car.solve(situation(ControllerState.ARMED, ControllerFeed.WHOLE, "passenger-door", "open"));
        assertThat(car.voltsAtTrigger(open)).isCloseTo(0.60, within(0.03));
        OperatingPoint closed = car.solve(situation(ControllerState.ARMED, ControllerFeed.WHOLE));
        assertThat(car.voltsAtTrigger(closed)).isCloseTo(12.6, within(HAND_VOLTS));
        // The other doors' lamps stay dark.
        assertThat(car.voltsAcross(open, "driver-lamp-lamp")).isCloseTo(0, within(1e-3));
    }

    @Test
    void aCutWireHasTwoEndsAndATappedOneHasOne() {
        Wired fitted = Car.fitted(Jobs.simple()).wired;
        CircuitId starter = new CircuitId("starter");
        CircuitId dome = new CircuitId("dome");
        assertThat(fitted.factory().before().get(starter))
                .isNotEqualTo(fitted.factory().after().get(starter));
        assertThat(fitted.factory().before().get(dome))
                .isEqualTo(fitted.factory().after().get(dome));
    }

    @Test
    void theFuseOnTheWayToTheSupplyLeadIsTheOneThatIsOut() {
        Wired fitted = Car.fitted(Jobs.simple()).wired;
        assertThat(fitted.controller().orElseThrow().feedFuses())
                .containsExactly(Objects.requireNonNull(fitted.added().parts().get(new AddedPartId("F1")))
                        .part());
    }

    @Test
    void everyPartRemembersWhereItCameFrom() {
        Wired fitted = Car.fitted(Jobs.vanJob()).wired;
        assertThat(fitted.network().parts())
                .allSatisfy(part -> assertThat(fitted.origins()).containsKey(part.id()));
    }

    private static Situation situation(ControllerState state, ControllerFeed feed, String... moved) {
        Map<OperableId, String> positions = new TreeMap<>();
        for (int k = 0; k < moved.length; k += 2) {
            positions.put(new OperableId(moved[k]), moved[k + 1]);
        }
        return new Situation(new TreeMap<>(positions), SupplyPoint.REST, state, feed);
    }

    private record Car(Wired wired, Settings settings, Solver solver) {

        static Car stock(Jobs.Job job) {
            return of(VehicleWiring.stock(job.brief().sheet(), Corner.TYPICAL), job);
        }

        static Car fitted(Jobs.Job job) {
            return of(VehicleWiring.fitted(job.brief(), job.plan(), Corner.TYPICAL), job);
        }

        private static Car of(Wired wired, Jobs.Job job) {
            Settings settings =
                    new Settings(wired, job.brief().sheet(), job.brief().kit().behaviour());
            return new Car(wired, settings, Solver.of(wired.network()));
        }

        OperatingPoint solve(Situation situation) {
            return solver.solve(settings.of(situation)).settledPoint();
        }

        double voltsAcross(OperatingPoint point, String element) {
            Reach reach = Objects.requireNonNull(wired.factory().loads().get(new ElementId(element)));
            return point.volts(reach.from(), reach.to());
        }

        double voltsAtTrigger(OperatingPoint point) {
            InputReach input = Objects.requireNonNull(
                    wired.controller().orElseThrow().inputs().get(new LeadId("trigger")));
            return point.volts(input.wire(), input.ground());
        }
    }
}
