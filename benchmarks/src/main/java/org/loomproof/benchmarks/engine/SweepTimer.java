package org.loomproof.benchmarks.engine;

import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.function.Function;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.solve.SolveOutcome;
import org.loomproof.network.solve.Sweep;

/** Processor time of one sweep on one thread, check of Kirchhoff's law included. */
final class SweepTimer {
    private final Sweep sweep;
    private final List<Setting> settings;

    SweepTimer(Network network, List<Setting> settings) {
        this.sweep = Sweep.of(network);
        this.settings = settings;
    }

    void warmUp(int sweeps) {
        for (int k = 0; k < sweeps; k++) {
            micros();
        }
    }

    List<SolveOutcome> outcomes() {
        return sweep.solve(settings);
    }

    /** Microseconds of processor time a setting. */
    double micros() {
        long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        int count = outcomes().size();
        return (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before) / 1e3 / count;
    }

    /** Wall microseconds a setting on so many threads. */
    double wallMicros(int threads) {
        long before = System.nanoTime();
        int count = sweep.solve(settings, threads, Function.identity()).size();
        return (System.nanoTime() - before) / 1e3 / count;
    }

    long work() {
        return sweep.work();
    }

    /** Prints the time of sweeps over trees of several sizes, then, unless a third argument stands, over looms of each shape. Arguments: rounds, seed. */
    public static void main(String[] arguments) {
        int rounds = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 7;
        long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : 1;
        for (int nodes : new int[] {20, 80, 300, 1000}) {
            Network network = Loom.ofNodes(Loom.Shape.TREE, nodes, seed);
            time("tree of " + nodes + " nodes, walk", network, Loom.walk(network, 2000, seed + 4), rounds);
        }
        for (int each : new int[] {1, 4, 8, 14}) {
            Network network = Loom.ofCurves(Loom.Shape.TREE, each, seed);
            time(
                    "tree of 290 with " + (6 * each + 2) + " curved, walk",
                    network,
                    Loom.walk(network, 2000, seed + 4),
                    rounds);
        }
        if (arguments.length > 2) {
            return;
        }
        for (boolean large : new boolean[] {false, true}) {
            for (Loom.Shape shape : Loom.Shape.values()) {
                Network network = large ? Loom.large(shape, seed) : Loom.small(shape, seed);
                String name = shape + " " + (network.nodes().size() - 1);
                time(name + " walk", network, Loom.walk(network, 2000, seed + 4), rounds);
                time(name + " single faults", network, Comparison.faults(network, seed), rounds);
                time(name + " independent", network, Loom.draws(network, 2000, seed + 4), rounds);
            }
        }
    }

    private static void time(String name, Network network, List<Setting> settings, int rounds) {
        SweepTimer timer = new SweepTimer(network, settings);
        timer.warmUp(5);
        double[] micros = new double[rounds];
        long before = timer.work();
        for (int k = 0; k < rounds; k++) {
            micros[k] = timer.micros();
        }
        double work = (timer.work() - before) / (double) (rounds * settings.size());
        System.out.printf(
                "%-34s %s us a setting, %.0f nodes eliminated and linear solutions%n",
                name, Comparison.spread(micros), work);
    }
}
