package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Node;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.network.time.TimeOutcome;
import org.loomproof.network.time.TimeSolver;
import org.loomproof.network.time.Timeline;
import org.loomproof.network.time.Trace;
import org.loomproof.testing.Note;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.FaultProof;
import org.loomproof.workshop.prover.MishapResult;
import org.loomproof.workshop.prover.damage.Damage;
import org.loomproof.workshop.prover.explore.Answers;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.explore.Workbench;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Situation;

/**
 * Every claim that a fault or a slip breaks comes with a witness found among points of rest. Here the damaged car is run in time
 * from rest into that situation: two seconds later every wire must be at the volts of one of the points of rest found there.
 * What is worse in time is counted: a coil cut off without a way for its current, and a controller behind a poor joint that the
 * inrush of cold lamps puts to sleep again and again.
 */
class WitnessReplayTest {

    private static final double STEP_AT = 0.05;
    private static final double SECONDS = 2;

    @ParameterizedTest
    @MethodSource("folders")
    void aRunInTimeComesToRestWhereTheWitnessSays(Path folder) {
        Plan plan = PlannedExamples.job(folder).plan();
        Brief brief = ExamplesAreReadTest.brief(folder).set(plan.settings());
        Vehicle planned = Vehicle.fitted(brief, plan, Corner.TYPICAL);
        FaultProof proof = PlannedExamples.faults(folder);
        int replayed = 0;
        int worse = 0;
        int setAside = 0;
        for (MishapResult result : proof.results()) {
            Vehicle vehicle = Damage.of(result.mishap(), plan, planned.wired()).vehicle(brief);
            for (Situation situation : situations(result)) {
                switch (new Workbench().answers(vehicle, vehicle.settings().of(situation))) {
                    case Answers.AtRest rest -> {
                        switch (run(vehicle, situation)) {
                            case TimeOutcome.Finished(Trace trace) -> {
                                assertThat(nearest(trace, rest.points()))
                                        .as(folder + ": " + result.mishap().id() + " in " + situation)
                                        .isLessThan(0.05);
                                replayed++;
                            }
                            case TimeOutcome.GaveUp gaveUp -> {
                                assertThat(gaveUp.reason())
                                        .as(folder + ": " + result.mishap().id() + " in " + situation)
                                        .isInstanceOfAny(
                                                TimeOutcome.NoWayForCurrent.class, TimeOutcome.Chattering.class);
                                worse++;
                            }
                            case TimeOutcome.NotStarted notStarted -> setAside++;
                        }
                    }
                    case Answers.Chatters chatters -> setAside++;
                    case Answers.Lost lost -> setAside++;
                }
            }
        }
        Note.that(ExampleFiles.root().relativize(folder) + ": witnesses run in time " + replayed + ", worse in time "
                + worse + ", without a point of rest " + setAside);
        assertThat(worse + setAside).isLessThanOrEqualTo(replayed / 4);
    }

    private static Set<Situation> situations(MishapResult result) {
        Set<Situation> situations = new LinkedHashSet<>();
        result.breaks().stream()
                .filter(broken -> !broken.takesEnds())
                .forEach(broken -> situations.add(broken.witness().situation()));
        return situations;
    }

    private static TimeOutcome run(Vehicle vehicle, Situation situation) {
        Setting rest = vehicle.settings()
                .of(new Situation(new TreeMap<>(), SupplyPoint.REST, ControllerState.DISARMED, ControllerFeed.WHOLE));
        Setting witness = vehicle.settings().of(situation);
        Timeline timeline = Timeline.settled(rest).then(STEP_AT, before -> witness);
        return TimeSolver.of(vehicle.wired().network()).run(timeline, SECONDS);
    }

    /** The most volts by which any wire is off, at the point of rest where that is least. */
    private static double nearest(Trace trace, List<OperatingPoint> points) {
        double least = Double.POSITIVE_INFINITY;
        for (OperatingPoint point : points) {
            double most = 0;
            for (Node node : point.network().nodes()) {
                if (!point.isFloating(node)) {
                    most = Math.max(most, Math.abs(point.volts(node) - trace.volts(node, SECONDS)));
                }
            }
            least = Math.min(least, most);
        }
        return least;
    }

    static List<Path> folders() {
        return Sample.of(ExampleFiles.list(), 3);
    }
}
