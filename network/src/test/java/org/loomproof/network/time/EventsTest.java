package org.loomproof.network.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.loomproof.network.TestNetwork.at;
import static org.loomproof.network.TestNetwork.id;
import static org.loomproof.network.TestNetwork.network;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.part.Capacitor;
import org.loomproof.network.part.Contact;
import org.loomproof.network.part.Drive;
import org.loomproof.network.part.Fuse;
import org.loomproof.network.part.LogicInput;
import org.loomproof.network.part.LogicLevel;
import org.loomproof.network.part.LowSideOutput;
import org.loomproof.network.part.PulsedSource;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.TimeCurrentBand;
import org.loomproof.network.part.TimeCurrentBand.Edge;
import org.loomproof.network.part.TimeCurrentBand.Point;
import org.loomproof.network.solve.SolveOutcome;
import org.loomproof.network.time.StateMachine.After;
import org.loomproof.network.time.StateMachine.State;
import org.loomproof.network.time.StateMachine.WhenReads;
import org.loomproof.network.time.TimeEvent.FuseOpened;
import org.loomproof.network.time.TimeEvent.Reads;
import org.loomproof.network.time.TimeEvent.StateEntered;

/** What happens when: fuses, edges, inputs, timers, contacts that call each other. */
class EventsTest {
    /** An invented band; 135 % after at most 3600 s and 200 % after at most 120 s are UL/CSA 248-14 (glass, READ). */
    private static final TimeCurrentBand BAND =
            new TimeCurrentBand(List.of(new Point(1.35, 60, 3600), new Point(2, 2, 120), new Point(6, 0.05, 0.5)));

    private static Trace overloaded(double multiple, Edge edge, double seconds) {
        Network network = network()
                .battery("battery", "plus", "0", 12, 1e-3)
                .contact("s", "plus", "load")
                .part(new Fuse(id("f"), at("load"), at("end"), 1e-3, 10, Optional.of(BAND)))
                .resistor("r", "end", "0", 12 / (10 * multiple) - 3e-3)
                .build();
        Timeline timeline = Timeline.settled(network.atRest()).then(1, s -> s.closed(id("s")));
        return TimeSolver.of(network)
                .run(timeline, seconds, TimeOptions.USUAL.withFuses(edge))
                .finishedTrace();
    }

    private static double opensAfter(Trace trace) {
        return trace.events().stream()
                        .filter(FuseOpened.class::isInstance)
                        .findFirst()
                        .orElseThrow()
                        .seconds()
                - 1;
    }

    @ParameterizedTest
    @CsvSource({"1.4", "2", "3", "6", "12"})
    void aFuseOpensAtASteadyCurrentWhenItsBandSays(double multiple) {
        for (Edge edge : Edge.values()) {
            double seconds = BAND.seconds(multiple, edge);
            Trace trace = overloaded(multiple, edge, 2 + 1.2 * seconds);
            assertThat(opensAfter(trace)).as("%s at %s", edge, multiple).isCloseTo(seconds, within(1e-3 * seconds));
            assertThat(trace.amps(id("f"), trace.seconds())).isZero();
        }
    }

    @Test
    void aFuseThatCarriesLessThanItsBandNeverOpens() {
        assertThat(overloaded(1.3, Edge.EARLIEST, 1e5).events()).noneMatch(FuseOpened.class::isInstance);
    }

    @Test
    void sharesOfTheWayToOpeningAddUpAndARestCools() {
        Network network = network()
                .battery("battery", "plus", "0", 12, 1e-3)
                .contact("s", "plus", "load")
                .part(new Fuse(id("f"), at("load"), at("end"), 1e-3, 10, Optional.of(BAND)))
                .resistor("r", "end", "0", 0.6 - 3e-3)
                .build();
        TimeOptions early = TimeOptions.USUAL.withFuses(Edge.EARLIEST);
        // 2 s at twice the rating, in two parts with 6 s between: cooled by exp(-6 / 60).
        Timeline twice = Timeline.settled(network.atRest())
                .then(1, s -> s.closed(id("s")))
                .then(2, s -> s.open(id("s")))
                .then(8, s -> s.closed(id("s")));
        double opened = TimeSolver.of(network).run(twice, 20, early).finishedTrace().events().stream()
                .filter(FuseOpened.class::isInstance)
                .findFirst()
                .orElseThrow()
                .seconds();
        assertThat(opened).isCloseTo(8 + 2 * (1 - 0.5 * Math.exp(-0.1)), within(1e-3));
    }

    @Test
    void aPulsedSourceJumpsAtEveryEdgeAndItsFilteredMeanIsTheAverage() {
        Network network = network()
                .part(new PulsedSource(id("p"), at("raw"), at("0"), 12, 0, 1000, 0.25, 1))
                .resistor("r", "raw", "out", 999)
                .part(new Capacitor(id("c"), at("out"), at("0"), 100e-6))
                .build();
        Trace trace = TimeSolver.of(network)
                .run(Timeline.settled(network.atRest()), 0.05)
                .finishedTrace();
        // Two edges a period, the first at zero, the last at the end.
        assertThat(trace.jumps()).hasSize(101);
        assertThat(trace.volts(at("raw"), 0.0101)).isGreaterThan(11.9);
        assertThat(trace.volts(at("raw"), 0.0104)).isLessThan(0.1);
        assertThat(trace.volts(at("out"), 0.05)).isCloseTo(3, within(0.02));
    }

    @Test
    void anInputIsSeenToReadHighWhenItsFilterHasCharged() {
        Network network = inputBehindAFilter();
        Timeline timeline = Timeline.settled(network.atRest()).then(0.001, s -> s.closed(id("s")));
        Trace trace = TimeSolver.of(network).run(timeline, 0.05).finishedTrace();
        List<TimeEvent> readings =
                trace.events().stream().filter(Reads.class::isInstance).toList();
        assertThat(readings)
                .extracting(event -> ((Reads) event).level())
                .containsExactly(LogicLevel.LOW, LogicLevel.BETWEEN, LogicLevel.HIGH);
        double tau = 10e3 * 1e-6;
        assertThat(readings.get(1).seconds() - 0.001).isCloseTo(tau * Math.log(12 / 10.0), within(2e-5));
        assertThat(readings.get(2).seconds() - 0.001).isCloseTo(tau * Math.log(12 / 8.0), within(2e-5));
    }

    /** Low up to 2 V, high from 4 V, behind 10 kΩ and 1 uF; an output that works a lamp's stand-in. */
    private static Network inputBehindAFilter() {
        return network()
                .battery("battery", "plus", "0", 12, 1e-3)
                .contact("s", "plus", "sense")
                .resistor("r", "sense", "input", 10e3)
                .resistor("bleed", "sense", "0", 100)
                .part(new Capacitor(id("c"), at("input"), at("0"), 1e-6))
                .part(new LogicInput(
                        id("in"),
                        at("input"),
                        at("plus"),
                        at("0"),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        2,
                        4,
                        false))
                .part(new LowSideOutput(id("out"), at("lead"), at("plus"), at("0"), new Drive(0.1, 0, 5), true, false))
                .resistor("load", "plus", "lead", 12)
                .build();
    }

    @Test
    void aStateMachineActsOnItsInputAndLetsGoWhenItsTimerEnds() {
        Network network = inputBehindAFilter();
        StateMachine machine = new StateMachine(
                "logic",
                List.of(
                        new State("waiting", Set.of(), List.of(new WhenReads(id("in"), LogicLevel.HIGH, "acting"))),
                        new State("acting", Set.of(id("out")), List.of(new After(0.010, "done"))),
                        new State("done", Set.of(), List.of(new WhenReads(id("in"), LogicLevel.LOW, "waiting")))));
        Timeline timeline = Timeline.settled(network.atRest())
                .logic(machine)
                .then(0.001, s -> s.closed(id("s")))
                .then(0.030, s -> s.open(id("s")));
        Trace trace = TimeSolver.of(network).run(timeline, 0.08).finishedTrace();
        List<StateEntered> states = trace.events().stream()
                .filter(StateEntered.class::isInstance)
                .map(StateEntered.class::cast)
                .toList();
        assertThat(states).extracting(StateEntered::state).containsExactly("acting", "done", "waiting");
        double high = 0.001 + 10e3 * 1e-6 * Math.log(1.5);
        assertThat(states.get(0).seconds()).isCloseTo(high, within(2e-5));
        assertThat(states.get(1).seconds()).isCloseTo(states.get(0).seconds() + 0.010, within(1e-12));
        assertThat(trace.amps(id("load"), states.get(0).seconds() + 5e-3)).isCloseTo(1, within(0.02));
        assertThat(trace.amps(id("load"), states.get(0).seconds() - 1e-4)).isCloseTo(0, within(1e-6));
        assertThat(trace.amps(id("load"), states.get(1).seconds() + 1e-3)).isCloseTo(0, within(1e-6));
    }

    @Test
    void aMachineThatLeadsNowhereIsRefusedWithAllItsMistakes() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new StateMachine(
                        "m",
                        List.of(
                                new State("a", Set.of(), List.of(new After(1, "b"))),
                                new State("a", Set.of(), List.of(new After(1, "c"))))))
                .withMessageContaining("two states are named a")
                .withMessageContaining("leads to b")
                .withMessageContaining("leads to c");
    }

    @Test
    void logicThatDoesNotFitTheNetworkIsRefusedWithAllItsMistakes() {
        Network network = inputBehindAFilter();
        StateMachine machine = new StateMachine(
                "m",
                List.of(
                        new State("a", Set.of(id("s")), List.of(new WhenReads(id("load"), LogicLevel.HIGH, "b"))),
                        new State("b", Set.of(id("load")), List.of())));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Timeline.settled(network.atRest()).logic(machine))
                .withMessageContaining("load is no logic input")
                .withMessageContaining("s is no output")
                .withMessageContaining("load is no output");
    }

    /** A relay that cuts its own coil buzzes: with an armature that takes time, at a rate that is found. */
    @Test
    void aRelayThatCutsItsOwnCoilBuzzes() {
        Network network = network()
                .battery("battery", "plus", "0", 12, 1e-3)
                .part(new Relay(
                                id("k"),
                                at("coil"),
                                at("0"),
                                90,
                                7,
                                2,
                                List.of(Contact.rest(at("plus"), at("coil"))),
                                1e-3)
                        .timed(0.3, 2e-3, 1e-3))
                .resistor("damping", "coil", "0", 680)
                .build();
        assertThat(TimeSolver.of(network).run(Timeline.settled(network.atRest()), 0.1))
                .isInstanceOfSatisfying(
                        TimeOutcome.NotStarted.class,
                        outcome -> assertThat(outcome.start()).isInstanceOf(SolveOutcome.Chattering.class));
        Trace trace = TimeSolver.of(network)
                .run(Timeline.fromNothing(network.atRest()), 0.1)
                .finishedTrace();
        long moves = trace.events().stream()
                .filter(TimeEvent.ContactsMoved.class::isInstance)
                .count();
        assertThat(moves).isBetween(20L, 40L);
    }

    /** Without time to move there is no rate: words instead, after a bounded number of moves. */
    @Test
    void aRelayWithoutTimeToMoveThatCutsItsOwnCoilIsToldInWords() {
        Network network = network()
                .battery("battery", "plus", "0", 12, 1e-3)
                .part(new Relay(
                        id("k"), at("coil"), at("0"), 90, 7, 2, List.of(Contact.rest(at("plus"), at("coil"))), 1e-3))
                .build();
        assertThat(TimeSolver.of(network).run(Timeline.fromNothing(network.atRest()), 0.1))
                .isInstanceOfSatisfying(
                        TimeOutcome.GaveUp.class,
                        gaveUp -> assertThat(gaveUp.reason()).isEqualTo(new TimeOutcome.Chattering(List.of(id("k")))));
    }

    /**
     * Each of 2,001 relays feeds the next one's coil through its rest contact, so the ring never comes to rest: it runs on to the
     * end, or is given up in words, within the steps allowed.
     */
    @Test
    void aRingOfThousandsOfRelaysRunsWithinTheStepsAllowed() {
        int count = 2001;
        var ring = network().battery("b", "30", "0", 12.6, 1e-4);
        for (int k = 0; k < count; k++) {
            ring.part(new Relay(
                            id("k" + k),
                            at("coil" + k),
                            at("0"),
                            90,
                            7,
                            2,
                            List.of(Contact.rest(at("30"), at("coil" + (k + 1) % count))),
                            1e-3)
                    .timed(0.3, 5e-3, 3e-3));
            ring.resistor("clamp" + k, "coil" + k, "0", 300);
        }
        Network network = ring.build();
        int steps = 500;
        TimeOutcome outcome = TimeSolver.of(network)
                .run(Timeline.fromNothing(network.atRest()), 0.04, TimeOptions.USUAL.withMostSteps(steps));
        Trace trace = switch (outcome) {
            case TimeOutcome.Finished finished -> finished.trace();
            case TimeOutcome.GaveUp gaveUp -> gaveUp.trace();
            case TimeOutcome.NotStarted none -> throw new AssertionError(none);
        };
        assertThat(trace.steps()).isLessThanOrEqualTo(steps);
        assertThat(trace.events().stream().filter(TimeEvent.ContactsMoved.class::isInstance))
                .hasSizeGreaterThan(2 * count);
    }

    @Test
    void aRunThatTakesTooManyStepsIsToldInWordsWithWhatItFound() {
        TimeOptions few = TimeOptions.USUAL.withMostSteps(50);
        assertThat(TimeSolver.of(CrankingCircuit.NETWORK).run(CrankingCircuit.timeline(), CrankingCircuit.END, few))
                .isInstanceOfSatisfying(TimeOutcome.GaveUp.class, gaveUp -> {
                    assertThat(gaveUp.reason()).isEqualTo(new TimeOutcome.TooManySteps(50));
                    assertThat(gaveUp.trace().seconds()).isEqualTo(gaveUp.atSeconds());
                    assertThat(gaveUp.atSeconds()).isBetween(1e-9, 0.1);
                });
    }

    @Test
    void aTimelineRefusesWhatCannotBe() {
        Timeline timeline = CrankingCircuit.timeline();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> timeline.then(0.01, s -> s))
                .withMessageContaining("must not come before");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> timeline.supply(id("k"), Waveform.of(0, 12)))
                .withMessageContaining("no battery");
        assertThatIllegalArgumentException().isThrownBy(() -> Waveform.of(0, 12, -1, 3));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TimeOptions.USUAL.withTolerance(1e-12))
                .withMessageContaining("1e-7");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CrankingCircuit.run(TimeOptions.USUAL).volts(CrankingCircuit.COIL, 1))
                .withMessageContaining("the run goes from 0");
    }
}
