package org.loomproof.network.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.loomproof.network.part.PartId;
import org.loomproof.network.solve.CompanionSolver;

/** Keeps the stages of every step. */
final class Recorder {
    private final CompanionSolver solver;
    private final Method method;
    private final List<Trace.Sample> samples = new ArrayList<>();
    private final List<TimeEvent> events = new ArrayList<>();
    private final Moving moving;
    private Steady steady;

    /** Moving currents at each stage of the last step tried. */
    private final double[][] stageAmps;

    private double storedAtStart;
    private Set<PartId> passedAtStart = Set.of();
    private double cutJoules;

    Recorder(CompanionSolver solver, Method method) {
        this.solver = solver;
        this.method = method;
        moving = new Moving(solver);
        steady = new Steady(moving);
        stageAmps = new double[method.last()][moving.count()];
    }

    List<TimeEvent> events() {
        return events;
    }

    void begin(double stored, Set<PartId> passed) {
        storedAtStart = stored;
        passedAtStart = passed;
    }

    /** Energy that a part taken out of the network took with it. */
    void cut(double joules) {
        cutJoules += joules;
    }

    /** The instant after a jump, or the first one; whether parts were switched, and not only sources jumped. */
    void start(double seconds, boolean switched) {
        if (switched) {
            steady = new Steady(moving);
        }
        keep(seconds, Trace.Kind.START);
    }

    /** Takes note of the present solution as a stage of a step that may come to be taken. */
    void stage(int stage) {
        moving.takeAmps(stageAmps[stage]);
    }

    /** A step taken, the last one tried, with the voltages of its stages. */
    void step(double from, double to, double[][] stageVolts) {
        for (int k = 1; k + 1 < method.kept.length; k++) {
            int stage = method.kept[k];
            double at = from + method.at[stage] * (to - from);
            samples.add(new Trace.Sample(
                    at, Trace.Kind.INNER, stageVolts[stage].clone(), stageAmps[stage].clone(), steady));
        }
        keep(to, Trace.Kind.END);
    }

    private void keep(double seconds, Trace.Kind kind) {
        double[] amps = new double[moving.count()];
        moving.takeAmps(amps);
        samples.add(new Trace.Sample(seconds, kind, solver.volts().clone(), amps, steady));
    }

    Trace trace(double storedAtEnd) {
        return new Trace(solver, method, samples, events, storedAtEnd - storedAtStart, cutJoules, passedAtStart);
    }
}
