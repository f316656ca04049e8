package org.loomproof.network.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.loomproof.network.TestNetwork;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.DiodeModel;
import org.loomproof.network.part.Fuse;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.Wire;
import org.loomproof.testing.Sample;

/** What is told without solving, against solving. */
class ForesightTest {
    /** A network at rest in one setting, solved by itself. */
    private static final class AtRest {
        private final Layout layout;
        private final PointSolver points;
        private final double[] drives;

        AtRest(Layout layout, Setting setting) {
            this.layout = layout;
            points = new PointSolver(layout, SolverOptions.USUAL, Trust.ROUGH_VOLTS);
            SettingChange change = new SettingChange(layout.network.parts().size());
            change.to(setting);
            points.apply(setting, change);
            assertThat(points.solveRoughly(ContactPattern.of(layout.thresholds.length, t -> false)))
                    .isTrue();
            assertThat(points.solve() && points.checked()).isTrue();
            drives = new double[layout.thresholds.length];
            points.takeDrives(drives);
        }

        boolean isCalled(int threshold) {
            return drives[threshold] >= layout.thresholds[threshold].riseVolts();
        }

        double volts(int rank) {
            return points.volts()[rank];
        }
    }

    @Test
    void whatIsToldIsWhatSolvingFinds() {
        int told = 0;
        int moves = 0;
        int all = 0;
        for (long seed : Sample.seeds(12, 200).toArray()) {
            Network network = SuppliedLoom.of(seed);
            Layout layout = new Layout(network);
            Foresight foresight = new Foresight(layout, FirmSupply.of(layout).orElseThrow());
            SettingChange change = new SettingChange(network.parts().size());
            for (Setting setting : SuppliedLoom.walk(network, seed, 300)) {
                change.to(setting);
                for (int c = 0; c < change.count(); c++) {
                    foresight.set(change.part(c), setting);
                }
                AtRest solved = new AtRest(layout, setting);
                all++;
                if (foresight.isSure(setting)) {
                    told++;
                    for (int t = 0; t < layout.thresholds.length; t++) {
                        moves += foresight.isCalled(t) ? 1 : 0;
                        assertThat(foresight.isCalled(t))
                                .as("loom %s, threshold %s of %s", seed, t, setting)
                                .isEqualTo(solved.isCalled(t));
                    }
                } else {
                    foresight.learn(solved.points, 0);
                }
            }
        }
        assertThat(told).isBetween(all / 4, all - 1);
        assertThat(moves).isGreaterThan(told);
    }

    @Test
    void noFirmRankStandsLowerThanItIsToldAndTheBatteryGivesNoMore() {
        int firm = 0;
        double nearest = Double.POSITIVE_INFINITY;
        for (long seed : Sample.seeds(12, 200).toArray()) {
            Network network = SuppliedLoom.of(seed);
            Layout layout = new Layout(network);
            FirmSupply supply = FirmSupply.of(layout).orElseThrow();
            Battery battery = (Battery) network.parts().getFirst();
            for (Setting setting : SuppliedLoom.walk(network, 100 + seed, 100)) {
                if (!isWithinBounds(network, setting, supply)) {
                    continue;
                }
                AtRest solved = new AtRest(layout, setting);
                int plus = layout.rankOfNode[network.indexOf(battery.plus())];
                double amps = (battery.emfVolts() - solved.volts(plus)) / battery.innerOhms();
                assertThat(amps).isLessThanOrEqualTo(supply.mostAmps());
                for (int k = 0; k < layout.rankCount; k++) {
                    assertThat(solved.volts(k))
                            .isBetween(Math.max(supply.leastVolts[k], 0) - 1e-6, supply.emfVolts + 1e-6);
                    if (supply.leastVolts[k] > 0) {
                        firm++;
                        nearest = Math.min(nearest, solved.volts(k) - supply.leastVolts[k]);
                    }
                }
            }
        }
        assertThat(firm).isGreaterThan(1000);
        // The bound is of some use: somewhere it lies within a volt of what is.
        assertThat(nearest).isLessThan(1);
    }

    /** No conductor of the supply is broken, no short draws too much, no contact is held off its rest, all is as built. */
    private static boolean isWithinBounds(Network network, Setting setting, FirmSupply supply) {
        for (int p = 0; p < network.parts().size(); p++) {
            Part part = network.parts().get(p);
            boolean isConductor = part instanceof Wire
                    || part instanceof Fuse
                    || part instanceof Battery
                    || part.id().equals(TestNetwork.id("strap"));
            boolean isBorne = switch (setting.fault(p)) {
                case NONE -> true;
                case BROKEN -> !isConductor;
                case SHORTED -> !isConductor && supply.bearsShort(p);
            };
            boolean isHeld = part instanceof Relay && setting.isHeldPulledIn(p);
            if (!isBorne || isHeld || !Double.isNaN(setting.stated(p))) {
                return false;
            }
        }
        return true;
    }

    @Test
    void aShortAcrossALoadIsBorneOnlyBehindWhatLimitsIt() {
        Network network = TestNetwork.network()
                .battery("b", "plus", "0", 12, 0.01)
                .contact("s", "plus", "hot")
                .resistor("heater", "hot", "0", 6)
                .resistor("series", "hot", "lit", 560)
                .resistor("small", "lit", "0", 100)
                .relay("relay", "hot", "0", "plus", "make", "rest")
                .build();
        Layout layout = new Layout(network);
        FirmSupply supply = FirmSupply.of(layout).orElseThrow();
        assertThat(supply.bearsShort(index(network, "small"))).isTrue();
        assertThat(supply.bearsShort(index(network, "series"))).isTrue();
        assertThat(supply.bearsShort(index(network, "heater"))).isFalse();
    }

    private static int index(Network network, String part) {
        return network.indexOf(TestNetwork.id(part));
    }

    @Test
    void nothingIsToldOfTwoSourcesOfNoneOfOneUpsideDownAndOfADiodeAcrossTheSupply() {
        TestNetwork two = TestNetwork.network().battery("a", "x", "0", 12, 1).battery("b", "y", "0", 6, 1);
        TestNetwork none = TestNetwork.network().resistor("r", "x", "0", 1);
        TestNetwork upsideDown = TestNetwork.network().battery("a", "0", "x", 12, 1);
        TestNetwork floating =
                TestNetwork.network().battery("a", "x", "y", 12, 1).resistor("r", "y", "0", 1);
        TestNetwork shortened =
                TestNetwork.network().battery("a", "x", "0", 12, 1).diode("d", "x", "0", DiodeModel.SILICON_1A);
        for (TestNetwork each : List.of(two, none, upsideDown, floating, shortened)) {
            assertThat(FirmSupply.of(new Layout(each.build()))).isEmpty();
        }
    }

    /** A sweep long enough for foresight against each setting afresh, and with two threads. */
    @Test
    void aLongSweepGivesWhatEachSettingGivesAfresh() {
        for (long seed : Sample.seeds(2, 20).toArray()) {
            Network network = SuppliedLoom.of(seed);
            List<Setting> settings = SuppliedLoom.walk(network, seed, 1300);
            Sweep sweep = Sweep.of(network);
            List<SolveOutcome> swept = sweep.solve(settings);
            List<SolveOutcome> byTwo = sweep.solve(settings, 2, Function.identity());
            for (int k = 0; k < settings.size(); k++) {
                SolveOutcome afresh = Solver.of(network, SolverOptions.USUAL.withoutOtherStablePoints())
                        .solve(settings.get(k));
                SweepTest.assertAlike(swept.get(k), afresh);
                if (swept.get(k) instanceof SolveOutcome.Settled(OperatingPoint point, var ignored)) {
                    OperatingPoint other = byTwo.get(k).settledPoint();
                    network.nodes()
                            .forEach(node -> assertThat(other.volts(node)).isEqualTo(point.volts(node)));
                }
            }
        }
    }

    /** The most that can flow is what the narrowest cut lets through (Ford and Fulkerson, Canadian Journal of Mathematics 8, 1956). */
    @Test
    void theMostThatFlowsIsWhatTheNarrowestCutLetsThrough() {
        for (long seed : Sample.seeds(60, 600).toArray()) {
            SplittableRandom random = new SplittableRandom(seed);
            int nodes = 4 + random.nextInt(5);
            TestNetwork wired = TestNetwork.network().battery("battery", "n0", "0", 12, 1);
            List<double[]> edges = new ArrayList<>();
            for (int e = 0; e < 3 * nodes; e++) {
                int a = random.nextInt(nodes);
                int b = random.nextInt(nodes + 1);
                double ohms = random.nextDouble(1, 20);
                if (a != b) {
                    wired.resistor("r" + e, "n" + a, b == nodes ? "0" : "n" + b, ohms);
                    edges.add(new double[] {a, b, 12 / ohms});
                }
            }
            Network network = wired.build();
            double narrowest = Double.POSITIVE_INFINITY;
            for (int side = 1; side < 1 << nodes; side += 2) {
                double through = 0;
                for (double[] edge : edges) {
                    boolean isIn = (side >> (int) edge[0] & 1) == 1;
                    boolean isOtherIn = (side >> (int) edge[1] & 1) == 1;
                    through += isIn == isOtherIn ? 0 : edge[2];
                }
                narrowest = Math.min(narrowest, through);
            }
            double found = FirmSupply.of(new Layout(network)).orElseThrow().mostAmps() - FirmSupply.ROOM_AMPS;
            assertThat(found).isCloseTo(narrowest, within(1e-9 * narrowest));
        }
    }
}
