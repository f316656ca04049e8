package org.loomproof.network.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.loomproof.network.part.PartId;
import org.loomproof.network.solve.CompanionSolver;

/** Keeps every step's three points. */
final class Recorder {
    private final CompanionSolver solver;
    private final List<Trace.Sample> samples = new ArrayList<>();
    private final List<TimeEvent> events = new ArrayList<>();
    private final Moving moving;
    private Steady steady;

    /** Voltages and moving currents at the inner point of the last step tried. */
    private final double[] innerVolts;

    private final double[] innerAmps;
    private double storedAtStart;
    private Set<PartId> passedAtStart = Set.of();
    private double cutJoules;

    Recorder(CompanionSolver solver) {
        this.solver = solver;
        moving = new Moving(solver);
        steady = new Steady(moving);
        innerVolts = new double[solver.rankCount()];
        innerAmps = new double[moving.count()];
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

    /** Takes note of the present solution as the inner point of a step that may come to be taken. */
    void inner() {
        System.arraycopy(solver.volts(), 0, innerVolts, 0, innerVolts.length);
        moving.takeAmps(innerAmps);
    }

    double[] innerVolts() {
        return innerVolts;
    }

    /** A step taken, the last one tried. */
    void step(double from, double to) {
        double inner = from + Step.INNER * (to - from);
        samples.add(new Trace.Sample(inner, Trace.Kind.INNER, innerVolts.clone(), innerAmps.clone(), steady));
        keep(to, Trace.Kind.END);
    }

    private void keep(double seconds, Trace.Kind kind) {
        double[] amps = new double[moving.count()];
        moving.takeAmps(amps);
        samples.add(new Trace.Sample(seconds, kind, solver.volts().clone(), amps, steady));
    }

    Trace trace(double storedAtEnd) {
        return new Trace(solver, samples, events, storedAtEnd - storedAtStart, cutJoules, passedAtStart);
    }
}
