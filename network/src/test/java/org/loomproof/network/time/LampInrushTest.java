package org.loomproof.network.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.loomproof.network.TestNetwork.at;
import static org.loomproof.network.TestNetwork.id;
import static org.loomproof.network.TestNetwork.network;

import org.junit.jupiter.api.Test;
import org.loomproof.network.law.FilamentCurve;
import org.loomproof.network.law.FilamentHeat;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.part.Lamp;

/** A cold filament draws a multiple of its rating and gets there from above. */
class LampInrushTest {
    private static final Lamp LAMP = new Lamp(id("lamp"), at("lamp"), at("0"), 12, 21);

    private static final Network NETWORK = network()
            .battery("battery", "plus", "0", 12, 1e-6)
            .contact("s", "plus", "lamp")
            .part(LAMP)
            .build();

    private static Trace switchedOn(TimeOptions options) {
        return TimeSolver.of(NETWORK)
                .run(Timeline.fromNothing(NETWORK.atRest()).then(0.01, s -> s.closed(id("s"))), 1.5, options)
                .finishedTrace();
    }

    @Test
    void inrushIsThatOfTheColdResistanceAndItSettlesAtTheRating() {
        Trace trace = switchedOn(TimeOptions.USUAL);
        double cold = 12 / (LAMP.hotOhms() * Lamp.TUNGSTEN_COLD_TO_HOT + 1e-3);
        assertThat(trace.amps(id("lamp"), 0.01)).isCloseTo(cold, within(1e-3 * cold));
        assertThat(trace.ampsExtremes(id("lamp")).greatest()).isCloseTo(cold, within(1e-3 * cold));
        assertThat(trace.amps(id("lamp"), 1.5)).isCloseTo(1.75, within(1e-3));
    }

    /** What is put in goes into heat held and heat given off; the second opinion is a plain Runge-Kutta run of the law. */
    @Test
    void coolingFilamentFollowsTheLawAsAnotherMethodFindsIt() {
        FilamentHeat heat = FilamentHeat.of(LAMP);
        Trace trace = switchedOn(TimeOptions.USUAL.withTolerance(1e-6));
        double x = heat.coldShare();
        double h = 1e-5;
        double contact = 1e-3 + 1e-6;
        for (int k = 0; k < 30_000; k++) {
            double k1 = rate(heat, x, contact);
            double k2 = rate(heat, x + 0.5 * h * k1, contact);
            double k3 = rate(heat, x + 0.5 * h * k2, contact);
            double k4 = rate(heat, x + h * k3, contact);
            x += h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
            if (k % 1500 == 1499) {
                double expected = 12 / (1 / heat.siemens(FilamentHeat.root(x)) + contact);
                assertThat(trace.amps(id("lamp"), 0.01 + (k + 1) * h)).isCloseTo(expected, within(1e-4 * expected));
            }
        }
    }

    private static double rate(FilamentHeat heat, double x, double contactOhms) {
        double root = FilamentHeat.root(x);
        double ohms = 1 / heat.siemens(root);
        return heat.rate(root, 12 * ohms / (ohms + contactOhms));
    }

    @Test
    void aLongRunEndsOnTheSteadyCurve() {
        FilamentHeat heat = FilamentHeat.of(LAMP);
        FilamentCurve curve = FilamentCurve.of(LAMP);
        for (double volts : new double[] {0, 1, 6, 12, 14.4}) {
            double share = heat.steadyShare(volts);
            double root = FilamentHeat.root(share);
            assertThat(heat.rate(root, volts)).isCloseTo(0, within(1e-12));
            assertThat(heat.siemens(root)).isCloseTo(curve.chordSiemens(volts), within(1e-12));
            double after = heat.implicitRoot(heat.coldShare(), 1e6, volts, 1);
            assertThat(FilamentHeat.share(after)).isCloseTo(share, within(1e-6));
        }
    }
}
