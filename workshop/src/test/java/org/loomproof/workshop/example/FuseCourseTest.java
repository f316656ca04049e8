package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Fuse;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.part.Switch;
import org.loomproof.network.part.TimeCurrentBand;
import org.loomproof.network.time.TimeEvent;
import org.loomproof.network.time.TimeOptions;
import org.loomproof.network.time.TimeSolver;
import org.loomproof.network.time.Timeline;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.trade.fuse.Fuses;
import org.loomproof.workshop.trade.fuse.OpeningTimes;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.trade.wire.Conductors;

/**
 * Fuses of planned jobs in a run in time. Their band is that of UL 248-14 as a fuse maker's guide gives it (read), the latest times of
 * glass fuses: the limits of ISO 8820-3 for blades could not be read anywhere, and nothing leans on them.
 */
class FuseCourseTest {

    /** Battery, factory wire, holder and the body on the way back, as the sizing takes them. Common practice. */
    private static final double BEFORE_THE_WIRE_OHMS = 0.1;

    private static final double SHORTED_AT = 1;
    private static final PartId FUSE = new PartId("fuse");
    private static final PartId SHORT = new PartId("short");

    static List<Path> examples() {
        return Sample.of(ExampleFiles.list(), 4);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void aShortAnywhereBehindAPlannedFuseOpensItWithinMinutes(Path folder) {
        Plan plan = PlannedExamples.job(folder).plan();
        double latest = OpeningTimes.longest(OpeningTimes.soon()).value();
        for (AddedPart part : plan.parts()) {
            if (part instanceof AddedPart.Fuse fuse) {
                for (double share : List.of(0.01, 0.5, 1.0)) {
                    assertThat(secondsToOpen(fuse, share * ohmsBehind(plan, fuse), latest))
                            .as("%s %s at %s of the run", folder.getFileName(), fuse, share)
                            .isLessThanOrEqualTo(latest);
                }
            }
        }
    }

    /** The longest wire that leaves the fuse: a short at its far end draws least. */
    private static double ohmsBehind(Plan plan, AddedPart.Fuse fuse) {
        End out = new End.OfPart(fuse.id(), "2");
        return plan.wires().stream()
                .filter(wire -> wire.from().equals(out) || wire.to().equals(out))
                .mapToDouble(FuseCourseTest::ohms)
                .max()
                .orElseThrow();
    }

    private static double ohms(AddedWire wire) {
        return Conductors.ohmsPerMetre(wire.size()) * wire.length().value();
    }

    private static double secondsToOpen(AddedPart.Fuse fuse, double wireOhms, double latest) {
        Node plus = new Node("plus");
        Node before = new Node("before");
        Node behind = new Node("behind");
        Node far = new Node("far");
        Network network = Network.builder()
                .add(new Battery(
                        new PartId("battery"),
                        plus,
                        Node.CHASSIS,
                        SupplyPoint.LOW.volts().value(),
                        1e-3))
                .add(new Resistor(new PartId("way"), plus, before, BEFORE_THE_WIRE_OHMS))
                .add(new Fuse(
                        FUSE,
                        before,
                        behind,
                        Fuses.coldResistance(fuse.rating()).value(),
                        fuse.rating().value(),
                        Optional.of(band())))
                .add(new Resistor(new PartId("wire"), behind, far, wireOhms))
                .add(new Switch(SHORT, far, Node.CHASSIS, 1e-3))
                .build();
        Timeline timeline = Timeline.settled(network.atRest()).then(SHORTED_AT, s -> s.closed(SHORT));
        return TimeSolver.of(network)
                        .run(
                                timeline,
                                SHORTED_AT + 2 * latest,
                                TimeOptions.USUAL.withFuses(TimeCurrentBand.Edge.LATEST))
                        .finishedTrace()
                        .events()
                        .stream()
                        .filter(TimeEvent.FuseOpened.class::isInstance)
                        .mapToDouble(TimeEvent::seconds)
                        .findFirst()
                        .orElse(Double.POSITIVE_INFINITY)
                - SHORTED_AT;
    }

    /** Only the latest times are published; a fuse that opens sooner protects better, so the earliest are the same. */
    private static TimeCurrentBand band() {
        return new TimeCurrentBand(List.of(point(OpeningTimes.surely()), point(OpeningTimes.soon())));
    }

    private static TimeCurrentBand.Point point(double multiple) {
        double seconds = OpeningTimes.longest(multiple).value();
        return new TimeCurrentBand.Point(multiple, seconds, seconds);
    }
}
