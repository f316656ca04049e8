package org.loomproof.benchmarks.engine;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.solve.SolveOutcome;
import org.loomproof.network.solve.SolveOutcome.Settled;
import org.loomproof.network.solve.Solver;
import org.loomproof.network.solve.SolverOptions;

/** Processor time of one sweep on one thread, check of Kirchhoff's law included. */
final class SweepTimer {
    private SweepTimer() {}

    /** Microseconds of processor time a setting. */
    static double microsPerSetting(Solver solver, List<Setting> settings) {
        long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        int settled = 0;
        for (Setting setting : settings) {
            SolveOutcome outcome = solver.solve(setting);
            settled += outcome instanceof Settled ? 1 : 0;
        }
        long nanos = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before;
        if (settled == 0) {
            throw new IllegalStateException("nothing settled");
        }
        return nanos / 1e3 / settings.size();
    }

    /** Prints the time of sweeps over looms of each shape. */
    public static void main(String[] arguments) {
        int rounds = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 7;
        for (boolean large : new boolean[] {false, true}) {
            for (Loom.Shape shape : Loom.Shape.values()) {
                Network network = Loom.network(shape, large, 1);
                time(shape + " " + network.nodes().size() + " walk", network, Loom.walk(network, 2000, 5), rounds);
                time(shape + " " + network.nodes().size() + " draws", network, Loom.draws(network, 2000, 5), rounds);
            }
        }
    }

    private static void time(String name, Network network, List<Setting> settings, int rounds) {
        Solver solver = Solver.of(network, SolverOptions.USUAL.withoutOtherStablePoints());
        for (int warm = 0; warm < 5; warm++) {
            microsPerSetting(solver, settings);
        }
        double[] micros = new double[rounds];
        long work = solver.work();
        for (int k = 0; k < rounds; k++) {
            micros[k] = microsPerSetting(solver, settings);
        }
        double fronts = (solver.work() - work) / (double) (rounds * settings.size());
        Arrays.sort(micros);
        System.out.printf(
                "%-18s %6.2f / %6.2f / %6.2f us a setting, %.0f fronts and steps%n",
                name, micros[0], micros[rounds / 2], micros[rounds - 1], fronts);
    }
}
