package org.loomproof.workshop.meter.drain;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.IntFunction;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.loomproof.testing.Note;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.meter.drain.ParkedCar.Planted;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.standby.Standby;

/** Logs of made-up cars by another generator: how often a planted drain is told from sleep steps, and how often one is imagined. */
class DrainSetTest {

    private static final Jobs.Job JOB = Jobs.simple();
    private static final double TYPICAL =
            JOB.brief().sheet().vehicle().sleepCurrent().typical().value()
                    + Standby.added(JOB.brief(), JOB.plan(), ControllerState.ARMED)
                            .value();
    private static final double AMP_HOURS = 70;

    private static DrainFinding find(String text) {
        Checked<DrainLog> log = DrainReader.read(new SourceText("log.csv", text), JOB.brief(), JOB.plan());
        assertThat(log).as(text).isInstanceOf(Checked.Good.class);
        return DrainFinding.of(JOB.brief(), JOB.plan(), ((Checked.Good<DrainLog>) log).value());
    }

    /** How logs of one sort ended. */
    private static final class Tally {
        private int cars;
        private int right;
        private int half;
        private int wrong;
        private final Map<Behind, Integer> wrongly = new EnumMap<>(Behind.class);
        private int daysTold;
        private int daysRight;

        double rightShare() {
            return (double) right / cars;
        }

        double wrongShare() {
            return (double) wrong / cars;
        }
    }

    private interface Logged {
        String log(ParkedCar car, double length);
    }

    private static Map<Planted, Tally> tallies(SplittableRandom seeds, int cars, Logged logged) {
        Map<Planted, Tally> tallies = new EnumMap<>(Planted.class);
        for (Planted planted : Planted.values()) {
            Tally tally = tallies.computeIfAbsent(planted, p -> new Tally());
            for (int k = 0; k < cars; k++) {
                ParkedCar car = new ParkedCar(seeds.nextLong(), planted, TYPICAL);
                double length = 75 + 105 * seeds.nextDouble();
                count(tally, planted, car, find(logged.log(car, length)), length);
            }
        }
        return tallies;
    }

    @Test
    void aPlantedDrainIsToldFromStepsOfSleep() {
        SplittableRandom seeds = new SplittableRandom(20260612 + Sample.seed());
        Map<Planted, Tally> tallies = tallies(
                seeds,
                Sample.count(150, 1000),
                (car, length) -> car.log(new double[] {0.25, 0.5, 1}[seeds.nextInt(3)], length));
        note("", tallies);
        assertThat(tallies).hasSize(4).allSatisfy((planted, t) -> {
            assertThat(t.rightShare()).as(planted.name()).isGreaterThan(0.85);
            assertThat(t.wrongShare()).as(planted.name()).isLessThan(0.04);
            assertThat(t.daysRight).isGreaterThanOrEqualTo(t.daysTold * 9 / 10);
        });
    }

    /** Someone looks at the clamp now and then: a steady drain is told, and nothing is called in order: a waker would hide. */
    @Test
    void aSparseLogByHandIsLeftOpenRatherThanWrong() {
        SplittableRandom seeds = new SplittableRandom(20260613 + Sample.seed());
        Map<Planted, Tally> tallies = tallies(
                seeds,
                Sample.count(80, 500),
                (car, length) -> car.log(DoubleStream.of(1, 3, 5, 10, 15, 20, 30, 45, 60, 75, 90, 120, 150, 180)
                        .filter(at -> at <= length)));
        note(", looked at now and then", tallies);
        assertThat(tallies).allSatisfy((planted, t) -> {
            assertThat(t.wrongShare()).as(planted.name()).isLessThan(0.06);
            assertThat(t.wrongly).as(planted.name()).doesNotContainKey(Behind.IN_ORDER);
        });
        assertThat(requireNonNull(tallies.get(Planted.LEAK)).rightShare()).isGreaterThan(0.8);
    }

    private static void note(String how, Map<Planted, Tally> tallies) {
        tallies.forEach((planted, t) -> Note.that(String.format(
                Locale.ROOT,
                "drain%s, planted %s: %d cars, told %.1f %%, half of it %.1f %%, wrong %.1f %% %s, left open %.1f %%; days within what was said %d of %d",
                how,
                planted,
                t.cars,
                100 * t.rightShare(),
                100.0 * t.half / t.cars,
                100 * t.wrongShare(),
                t.wrongly,
                100.0 * (t.cars - t.right - t.half - t.wrong) / t.cars,
                t.daysRight,
                t.daysTold)));
    }

    private static void count(Tally tally, Planted planted, ParkedCar car, DrainFinding finding, double length) {
        tally.cars++;
        finding.settled().ifPresent(said -> {
            boolean isRight = switch (planted) {
                case NOTHING -> said == Behind.IN_ORDER || (said == Behind.GOING_TO_SLEEP && !car.sleepsBy(length));
                case LEAK -> said == Behind.STEADY_DRAIN;
                case WAKER -> said == Behind.WAKES_AGAIN;
                case LEAK_AND_WAKER -> said == Behind.STEADY_AND_WAKES;
            };
            boolean isHalf = planted == Planted.LEAK_AND_WAKER && !isRight && said.isDrain();
            tally.right += isRight ? 1 : 0;
            tally.half += isHalf ? 1 : 0;
            tally.wrong += isRight || isHalf ? 0 : 1;
            if (!isRight && !isHalf) {
                tally.wrongly.merge(said, 1, Integer::sum);
            }
        });
        if (finding.settled().isPresent() && finding.mild().isPresent()) {
            // A car maker's bulletin: 40 % of the capacity may be taken; the battery of the fixture is three years old.
            double days = AMP_HOURS * 0.4 / 24 / car.lastingAmps();
            tally.daysTold++;
            tally.daysRight += days >= finding.mild().get().low() * 0.999
                            && days <= finding.mild().get().high() * 1.001
                    ? 1
                    : 0;
        }
    }

    /** Ten minutes after locking nobody can tell a module that is awake from a drain. */
    @Test
    void rightAfterLockingNothingIsCalledADrain() {
        SplittableRandom seeds = new SplittableRandom(77);
        int imagined = 0;
        int cars = 200;
        for (int k = 0; k < cars; k++) {
            ParkedCar car = new ParkedCar(seeds.nextLong(), Planted.NOTHING, TYPICAL);
            imagined += find(car.log(0.5, 6 + 6 * seeds.nextDouble()))
                            .settled()
                            .filter(Behind::isDrain)
                            .isPresent()
                    ? 1
                    : 0;
        }
        Note.that("drain, healthy cars logged for six to twelve minutes: %d of %d called a drain"
                .formatted(imagined, cars));
        assertThat(imagined).isLessThanOrEqualTo(cars / 50);
    }

    @Test
    void garbageNeverGivesAVerdictOnTheCar() {
        SplittableRandom chance = new SplittableRandom(9);
        Map<String, IntFunction<Double>> sorts = Map.of(
                "anything", k -> Math.pow(10, -3 + 4 * chance.nextDouble()),
                "nothing", k -> 0.0,
                "rising", k -> 0.02 * Math.pow(1.1, k),
                "to and fro", k -> 1 + Math.sin(k * 0.7) * 0.9,
                "a welder", k -> 300 + 20 * chance.nextDouble());
        sorts.forEach((sort, amps) -> {
            for (int run = 0; run < 20; run++) {
                StringBuilder log = new StringBuilder("wire,step,value,unit\n");
                for (int k = 0; k < 60; k++) {
                    log.append(String.format(
                            Locale.ROOT, "battery,after %d min,%.3f,A%n", k + 1, Math.min(900, amps.apply(k))));
                }
                DrainFinding finding = find(log.toString());
                assertThat(finding.settled().filter(said -> said != Behind.NONE_OF_THESE))
                        .as(sort + " " + finding.chances() + finding.plateaus().size())
                        .isEmpty();
            }
        });
    }
}
