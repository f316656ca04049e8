package org.loomproof.workshop.meter.drain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.fixture.Jobs;
import org.loomproof.workshop.meter.drain.Branch.Seen;
import org.loomproof.workshop.meter.drain.Branch.Way;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.problem.ProblemKind;

class DrainTest {

    private static final Jobs.Job JOB = Jobs.simple();

    private static Checked<DrainLog> read(String lines) {
        return DrainReader.read(new SourceText("log.csv", "wire,step,value,unit\n" + lines), JOB.brief(), JOB.plan());
    }

    private static DrainLog log(String lines) {
        Checked<DrainLog> read = read(lines);
        assertThat(read).isInstanceOf(Checked.Good.class);
        return ((Checked.Good<DrainLog>) read).value();
    }

    private static DrainFinding find(String lines) {
        return DrainFinding.of(JOB.brief(), JOB.plan(), log(lines));
    }

    /** Levels in minutes and amps, a sample a minute. */
    private static String levels(double... minutesAndAmps) {
        StringBuilder lines = new StringBuilder();
        double from = 0;
        for (int k = 0; k < minutesAndAmps.length; k += 2) {
            for (double at = from + 1; at <= minutesAndAmps[k]; at++) {
                lines.append(String.format(Locale.ROOT, "battery,after %.0f min,%.3f,A%n", at, minutesAndAmps[k + 1]));
            }
            from = minutesAndAmps[k];
        }
        return lines.toString();
    }

    @Test
    void plateausAreFoundWhereTheyAre() {
        List<Plateau> plateaus =
                Plateaus.of(log(levels(5, 3.2, 20, 0.6, 60, 0.033)).samples());
        assertThat(plateaus).extracting(Plateau::toMinutes).containsExactly(5.0, 20.0, 60.0);
        assertThat(plateaus.getLast().amps()).isCloseTo(0.033, within(0.001));
    }

    /** The best cut of a short log by dynamic programming is the best of all cuts, each tried. */
    @Test
    void noOtherCutIsBetter() {
        SplittableRandom chance = new SplittableRandom(4);
        for (int run = 0; run < 60; run++) {
            List<Sample> samples = new ArrayList<>();
            double level = 1;
            for (int k = 0; k < 11; k++) {
                level *= chance.nextDouble() < 0.3 ? Math.pow(4, 2 * chance.nextDouble() - 1) : 1;
                samples.add(new Sample(k, level * (1 + 0.03 * chance.nextDouble()), 0.002));
            }
            double found = Plateaus.price(samples, cuts(Plateaus.of(samples), samples));
            double least = Double.POSITIVE_INFINITY;
            for (int mask = 0; mask < 1 << 10; mask++) {
                List<Integer> ends = new ArrayList<>();
                for (int k = 0; k < 10; k++) {
                    if ((mask >> k & 1) == 1) {
                        ends.add(k + 1);
                    }
                }
                ends.add(11);
                least = Math.min(least, Plateaus.price(samples, ends));
            }
            assertThat(found).isCloseTo(least, within(1e-6));
        }
    }

    private static List<Integer> cuts(List<Plateau> plateaus, List<Sample> samples) {
        List<Integer> ends = new ArrayList<>();
        int end = 0;
        for (Plateau plateau : plateaus) {
            end += plateau.samples();
            ends.add(end);
        }
        assertThat(end).isEqualTo(samples.size());
        return ends;
    }

    @Test
    void aCarThatSleepsIsInOrder() {
        DrainFinding finding = find(levels(5, 3.2, 20, 0.6, 100, 0.033));
        assertThat(finding.settled()).contains(Behind.IN_ORDER);
        assertThat(finding.hunt()).isEmpty();
        assertThat(finding.mild()).isPresent();
    }

    @Test
    void whatStaysIsADrainOnceNothingCanStillBeAwake() {
        assertThat(find(levels(5, 3.2, 9, 0.35)).settled()).isEmpty();
        assertThat(find(levels(5, 3.2, 9, 0.35)).mild()).isEmpty();
        DrainFinding finding = find(levels(5, 3.2, 120, 0.35));
        assertThat(finding.settled()).contains(Behind.STEADY_DRAIN);
        // 70 Ah of which 40 % may be taken, at 0.35 A: 3.3 days.
        assertThat(finding.mild().orElseThrow().low()).isLessThan(70 * 0.4 / 24 / 0.35);
        assertThat(finding.mild().orElseThrow().high()).isGreaterThan(70 * 0.4 / 24 / 0.35);
        assertThat(finding.cold().orElseThrow().typical())
                .isLessThan(finding.mild().orElseThrow().typical());
    }

    @Test
    void whatWakesByTheClockIsTold() {
        double[] turns = new double[2 + 4 * 7];
        turns[0] = 10;
        turns[1] = 0.9;
        for (int k = 0; k < 7; k++) {
            turns[2 + 4 * k] = 10 + 12 * k + 10;
            turns[3 + 4 * k] = 0.033;
            turns[4 + 4 * k] = 10 + 12 * k + 12;
            turns[5 + 4 * k] = 1.5;
        }
        DrainFinding finding = find(levels(turns) + "battery,after 96 min,0.033,A\nbattery,after 97 min,0.033,A\n");
        assertThat(finding.settled()).contains(Behind.WAKES_AGAIN);
        DrainFinding.Waking waking = finding.waking().orElseThrow();
        assertThat(waking.isRegular()).isTrue();
        assertThat(waking.everyMinutes().orElseThrow()).isCloseTo(12, within(0.5));
        // Two of twelve minutes at 1.5 A, ten at 33 mA.
        assertThat(finding.drawn().typical()).isCloseTo((2 * 1.5 + 10 * 0.033) / 12, within(0.04));
    }

    @Test
    void theBranchWithTheDrainIsFoundByMillivolts() {
        String log = levels(5, 3.2, 120, 0.35);
        Hunt first = find(log + "F7 10A,asleep,not taken,mV\nF8 5A,asleep,not taken,mV\n")
                .hunt()
                .orElseThrow();
        assertThat(first.next()).isPresent();
        assertThat(first.found()).isEmpty();
        // 0.32 A across the 7.7 mohm of a 10 A fuse: 2.5 mV; the others next to nothing.
        Hunt found = find(log + "F1,asleep,0.2,mV\nF7 10A,asleep,2.5,mV\nF8 5A,asleep,0.0,mV\n")
                .hunt()
                .orElseThrow();
        assertThat(found.found().map(Branch::name)).contains("F7 10A");
        Hunt elsewhere = find(log + "F1,asleep,0.1,mV\nF7 10A,asleep,0.0,mV\nF8 5A,asleep,0.0,mV\n")
                .hunt()
                .orElseThrow();
        assertThat(elsewhere.elsewhere()).isGreaterThan(Hunt.FOUND);
    }

    /** What a clamp showed at a branch is of use long before the log is. */
    @Test
    void aBranchIsToldWhileTheLogIsStillOpen() {
        DrainFinding finding = find("""
                battery,after 1 min,2.9,A
                battery,after 20 min,0.3,A
                battery,after 60 min,0.32,A
                radio,asleep,0.28,A
                """);
        assertThat(finding.settled()).isEmpty();
        assertThat(finding.hunt().orElseThrow().found().map(Branch::name)).contains("radio");
    }

    /** A fuse that the key feeds is dead while the car stands: F2 of the plan hangs on the ignition. */
    @Test
    void aFuseBehindTheKeyIsNotAskedFor() {
        assertThat(log(levels(10, 1)).branches()).extracting(Branch::name).containsExactly("F1");
    }

    /** With probabilities p the bits of a yes or no are the binary entropy (Shannon 1948): one bit at a half. */
    @Test
    void theNextBranchTellsMostPerMinute() {
        List<Branch> branches = List.of(
                new Branch("a", Way.CLAMP, false, Optional.empty()),
                new Branch("b", Way.ACROSS_FUSE, false, Optional.empty()),
                new Branch("c", Way.ACROSS_FUSE, false, Optional.of(new Seen(0.001, 0.005))));
        Hunt hunt = Hunt.of(branches, 0.3, 0.03);
        assertThat(hunt.next().map(Branch::name)).contains("b");
        assertThat(hunt.bits()).isBetween(0.0, 1.0);
        assertThat(hunt.chances().stream().mapToDouble(Hunt.Chance::probability).sum() + hunt.elsewhere())
                .isCloseTo(1, within(1e-9));
    }

    @Test
    void everythingThatIsWrongIsToldAtOnce() {
        Checked<DrainLog> read = read("""
                battery,key on,1.2,A
                battery,after 5 min,-0.3,A
                battery,after 6 min,OL,A
                F9,asleep,1.2,mV
                F9 10A,asleep,12.4,V
                F9 10A,asleep,3,ohm
                battery,after ten min,0.9,A
                """);
        assertThat(read).isInstanceOf(Checked.Bad.class);
        List<Problem> problems = ((Checked.Bad<DrainLog>) read).problems();
        assertThat(problems).extracting(p -> p.at().line()).containsExactly(2, 3, 4, 5, 6, 7, 8);
        assertThat(((Checked.Bad<DrainLog>) read("F9 10A,asleep,1.2,mV\n")).problems())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.MISSING);
    }

    @Test
    void fewerModulesAreAwakeTheLongerItLasts() {
        double before = 1;
        for (double minutes = 0.5; minutes < 300; minutes *= 1.3) {
            double now = Weighing.awakeAfter(minutes);
            assertThat(now).isLessThanOrEqualTo(before).isPositive();
            before = now;
        }
    }
}
