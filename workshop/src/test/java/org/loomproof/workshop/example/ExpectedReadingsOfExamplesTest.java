package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.solve.SolveOutcome;
import org.loomproof.network.solve.Solver;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.Level;
import org.loomproof.workshop.meter.expected.CircuitReadings;
import org.loomproof.workshop.meter.expected.ExpectedReading;
import org.loomproof.workshop.meter.expected.ExpectedReadings;
import org.loomproof.workshop.weigh.PlannedJob;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.RangedFigure;
import org.loomproof.workshop.wiring.Settings;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.wiring.VehicleWiring;
import org.loomproof.workshop.wiring.Wired;
import org.loomproof.workshop.words.Phrase;

/** What is computed from the paths of each example agrees with what its sheet says of the level at rest. */
class ExpectedReadingsOfExamplesTest {

    static Stream<Path> folders() {
        return ExampleFiles.list().stream();
    }

    @ParameterizedTest
    @MethodSource("folders")
    void atRestTheMeterShowsTheLevelOnTheSheet(Path folder) {
        PlannedJob job = PlannedExamples.job(folder);
        Brief brief = ExamplesAreReadTest.brief(folder);
        for (CircuitReadings circuit : ExpectedReadings.of(brief, job.plan())) {
            if (!circuit.whole().isEmpty()) {
                ExpectedReading rest = circuit.whole().getFirst();
                Level level =
                        brief.sheet().circuit(circuit.circuit()).switching().rest();
                String what = folder.getFileName() + " " + circuit.circuit() + " rests at " + level;
                switch (level) {
                    case Level.Supply supply ->
                        assertThat(rest.band().high(12.6)).as(what).isGreaterThan(11);
                    case Level.Ground ground ->
                        assertThat(rest.band().low(12.6)).as(what).isLessThan(1);
                    case Level.Resistance ground ->
                        assertThat(rest.band().low(12.6)).as(what).isLessThan(1);
                    case Level.Open open ->
                        assertThat(rest.band().low(12.6)).as(what).isLessThan(11);
                    case Level.Voltage(var volts) -> {
                        assertThat(rest.band().low(12.6)).as(what).isLessThan(volts.value());
                        assertThat(rest.band().high(12.6)).as(what).isGreaterThan(volts.value());
                    }
                    case Level.Reversing legs -> {}
                    case Level.Data never -> throw new AssertionError(what);
                }
            }
        }
    }

    /** A corner drawn by chance, with the meter put in by hand, never shows what the band does not hold. */
    @ParameterizedTest
    @MethodSource("picked")
    void noCarThatTheSheetMayDescribeShowsAnythingElse(Path folder) {
        Brief brief = ExamplesAreReadTest.brief(folder);
        RandomGenerator chance =
                new SplittableRandom(folder.getFileName().toString().hashCode());
        List<CircuitReadings> expected =
                ExpectedReadings.of(brief, PlannedExamples.job(folder).plan());
        for (int k = 0; k < CORNERS; k++) {
            Corner corner = Corner.TYPICAL;
            for (RangedFigure figure :
                    VehicleWiring.stock(brief.sheet(), Corner.TYPICAL).ranged()) {
                corner = corner.with(figure.key(), ENDS.get(chance.nextInt(ENDS.size())));
            }
            double battery = chance.nextDouble(10, 14);
            for (CircuitReadings circuit : expected) {
                for (ExpectedReading reading : circuit.whole()) {
                    double volts = metered(brief, circuit.circuit(), reading.when(), corner, battery);
                    assertThat(volts)
                            .as(
                                    "%s %s with %.1f V",
                                    circuit.circuit(), reading.when().positions(), battery)
                            .isBetween(
                                    reading.band().low(battery), reading.band().high(battery));
                }
            }
        }
    }

    private static final int CORNERS = 10;

    private static final List<Corner.Taken> ENDS = List.of(Corner.Taken.values());

    static List<Path> picked() {
        return Sample.of(ExampleFiles.list(), 6);
    }

    private static double metered(Brief brief, CircuitId circuit, Situation when, Corner corner, double battery) {
        Wired bare = VehicleWiring.stock(brief.sheet(), corner);
        Node wire = Objects.requireNonNull(bare.factory().before().get(circuit));
        Wired wired = bare.withMore(
                List.of(new Resistor(new PartId("meter"), wire, Node.CHASSIS, 10e6)), Phrase.of("origin.meter"));
        Setting setting = new Settings(wired, brief.sheet(), brief.kit().behaviour())
                .of(when)
                .emf(wired.battery(), battery);
        SolveOutcome outcome = Solver.of(wired.network()).solve(setting);
        assertThat(outcome).isInstanceOf(SolveOutcome.Settled.class);
        return ((SolveOutcome.Settled) outcome).point().volts(wire);
    }
}
