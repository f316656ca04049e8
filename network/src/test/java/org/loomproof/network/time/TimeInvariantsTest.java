package org.loomproof.network.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomproof.network.part.Node;

/** What must hold of any run, here of the cranked circuit. */
class TimeInvariantsTest {
    private static final List<Node> NODES = List.of(CrankingCircuit.COIL, CrankingCircuit.HELD_UP);

    @Test
    void smallerStepsComeToTheSame() {
        Trace usual = CrankingCircuit.run(TimeOptions.USUAL);
        Trace close = CrankingCircuit.run(TimeOptions.USUAL.withTolerance(1e-6));
        for (Node node : NODES) {
            double peak = close.voltsExtremes(node).greatest();
            assertThat(usual.voltsExtremes(node).greatest()).isCloseTo(peak, within(0.01 * peak));
            double sum = 0;
            int count = 0;
            for (double t = 0; t <= CrankingCircuit.END; t += 1e-5) {
                double miss = usual.volts(node, t) - close.volts(node, t);
                sum += miss * miss;
                count++;
            }
            assertThat(Math.sqrt(sum / count)).as("rms at %s", node).isLessThan(5e-3);
        }
    }

    /** At a tolerance at which steps are of second order, and just below, where they are of fourth. */
    @Test
    void bothMethodsComeToTheSame() {
        Trace close = CrankingCircuit.run(TimeOptions.USUAL.withTolerance(1e-6));
        for (double tolerance : new double[] {4e-3, 3.9e-3}) {
            Trace loose = CrankingCircuit.run(TimeOptions.USUAL.withTolerance(tolerance));
            assertThat(loose.events()).hasSameSizeAs(close.events());
            for (int k = 0; k < close.events().size(); k++) {
                double seconds = close.events().get(k).seconds();
                assertThat(loose.events().get(k).seconds()).isCloseTo(seconds, within(0.01 * seconds));
            }
            for (Node node : NODES) {
                double peak = close.voltsExtremes(node).greatest();
                assertThat(loose.voltsExtremes(node).greatest()).isCloseTo(peak, within(0.02 * peak));
            }
        }
    }

    @Test
    void theSameTimelineGivesTheSameBits() {
        Trace one = CrankingCircuit.run(TimeOptions.USUAL);
        Trace other = CrankingCircuit.run(TimeOptions.USUAL);
        assertThat(other.moments()).isEqualTo(one.moments());
        assertThat(other.events()).isEqualTo(one.events());
        for (double t : one.moments()) {
            assertThat(other.volts(CrankingCircuit.COIL, t)).isEqualTo(one.volts(CrankingCircuit.COIL, t));
        }
    }

    /** A tolerance a ten-thousandth as large makes steps a tenth, and what they miss a thousandth at the most. */
    @Test
    void whatSourcesGaveIsDissipatedOrStored() {
        for (double tolerance : new double[] {1e-2, 1e-3, 1e-4, 1e-5, 1e-6}) {
            EnergyBalance energy = CrankingCircuit.run(TimeOptions.USUAL.withTolerance(tolerance))
                    .energy();
            assertThat(energy.holdsWithin(0.1 * Math.pow(tolerance, 3.0 / 4)))
                    .as("%s", energy)
                    .isTrue();
        }
    }

    /** The same course begun 7 ms later takes the same course 7 ms later. */
    @Test
    void whatBeginsLaterHappensLater() {
        double shift = 7e-3;
        TimeOptions close = TimeOptions.USUAL.withTolerance(1e-6).withLongestStep(1e-3);
        Trace now = CrankingCircuit.run(close);
        Trace later = TimeSolver.of(CrankingCircuit.NETWORK)
                .run(CrankingCircuit.timelineFrom(shift), CrankingCircuit.END + shift, close)
                .finishedTrace();
        assertThat(later.events()).hasSameSizeAs(now.events());
        for (int k = 0; k < now.events().size(); k++) {
            assertThat(later.events().get(k).seconds())
                    .as("%s", now.events().get(k))
                    .isCloseTo(now.events().get(k).seconds() + shift, within(1e-7));
        }
        for (double t = 0; t < CrankingCircuit.END; t += 3.3e-4) {
            assertThat(later.volts(CrankingCircuit.HELD_UP, t + shift))
                    .isCloseTo(now.volts(CrankingCircuit.HELD_UP, t), within(1e-4));
        }
    }

    @Test
    void whatWasRunBeforeLeavesNothingBehind() {
        TimeSolver solver = TimeSolver.of(CrankingCircuit.NETWORK);
        TimeOutcome first = solver.run(CrankingCircuit.timeline(), CrankingCircuit.END);
        solver.run(CrankingCircuit.timelineFrom(0.01), CrankingCircuit.END);
        TimeOutcome again = solver.run(CrankingCircuit.timeline(), CrankingCircuit.END);
        assertThat(again.finishedTrace().moments())
                .isEqualTo(first.finishedTrace().moments());
        assertThat(again.finishedTrace().volts(CrankingCircuit.COIL, 0.0777))
                .isEqualTo(first.finishedTrace().volts(CrankingCircuit.COIL, 0.0777));
    }
}
