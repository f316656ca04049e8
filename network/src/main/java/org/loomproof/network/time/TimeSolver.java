package org.loomproof.network.time;

import org.loomproof.network.netlist.Network;
import org.loomproof.network.solve.CompanionSolver;
import org.loomproof.network.solve.Solver;
import org.loomproof.network.solve.SolverOptions;

/**
 * Runs a network in time: steps of the length that the tolerance allows, each ending at the latest where something is known
 * to happen, shortened to where something turns out to happen. After every jump the network is found anew with all charges,
 * coil currents and temperatures as they were. The network is laid out once for all its runs; the same timeline gives the
 * same bits, whatever was run before. Any thread may share it.
 */
public final class TimeSolver {
    /** Times the tolerance of a step: how far the tangents of curves may put out any voltage at a stage that is no answer. */
    private static final double STAGE_VOLTS = 1;

    private final Solver starts;
    private final CompanionSolver instants;

    private TimeSolver(Network network) {
        starts = Solver.of(network, SolverOptions.USUAL.withoutOtherStablePoints());
        instants = CompanionSolver.of(network);
    }

    /** A solver of a network, laid out for it. */
    public static TimeSolver of(Network network) {
        return new TimeSolver(network);
    }

    /**
     * Runs a timeline from 0 to {@code seconds}.
     *
     * @param seconds above zero
     * @throws IllegalArgumentException if the timeline belongs to another network
     */
    public TimeOutcome run(Timeline timeline, double seconds, TimeOptions options) {
        if (!(seconds > 0) || Double.isInfinite(seconds)) {
            throw new IllegalArgumentException("a run needs a time above zero, was " + seconds);
        }
        if (!timeline.network().equals(instants.network())) {
            throw new IllegalArgumentException("the timeline belongs to another network");
        }
        CompanionSolver fresh = instants.fresh(options.tolerance() * STAGE_VOLTS);
        return new TimeRun(starts.fresh(), fresh, timeline, seconds, options).run();
    }

    /** Runs a timeline with the usual options. */
    public TimeOutcome run(Timeline timeline, double seconds) {
        return run(timeline, seconds, TimeOptions.USUAL);
    }
}
