package org.loomproof.benchmarks.engine;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.solve.SolveOutcome;
import org.loomproof.network.solve.Sweep;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What a setting of a sweep costs, against the size of a tree-shaped loom and against how many of its parts are curved. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SweepBenchmark {
    private static final int SETTINGS = 1000;

    /** A sweep in which neighbours differ in one to three throws. */
    private record Prepared(Sweep sweep, List<Setting> settings) {
        static Prepared of(Network network) {
            return new Prepared(Sweep.of(network), Loom.walk(network, SETTINGS, 5));
        }

        List<SolveOutcome> run() {
            return sweep.solve(settings);
        }
    }

    /** Looms of about as many nodes as stated, a quarter of which end in a curved part. */
    @State(Scope.Benchmark)
    public static class Size {
        @Param({"20", "80", "300", "1000"})
        int nodes;

        @SuppressWarnings("NullAway.Init") // by prepare(), before any use
        private Prepared prepared;

        /** Lays the loom out. */
        @Setup
        public void prepare() {
            prepared = Prepared.of(Loom.ofNodes(Loom.Shape.TREE, nodes, 1));
        }
    }

    /** Looms of 290 nodes with so many each of lamps, triggers, outputs and indicators: six curved branches for one of each. */
    @State(Scope.Benchmark)
    public static class Curved {
        @Param({"1", "4", "8", "14"})
        int each;

        @SuppressWarnings("NullAway.Init") // by prepare(), before any use
        private Prepared prepared;

        /** Lays the loom out. */
        @Setup
        public void prepare() {
            prepared = Prepared.of(Loom.ofCurves(Loom.Shape.TREE, each, 1));
        }
    }

    /** Per setting. */
    @Benchmark
    @OperationsPerInvocation(SETTINGS)
    public List<SolveOutcome> size(Size size) {
        return size.prepared.run();
    }

    /** Per setting. */
    @Benchmark
    @OperationsPerInvocation(SETTINGS)
    public List<SolveOutcome> curved(Curved curved) {
        return curved.prepared.run();
    }
}
