package org.loomproof.benchmarks.engine;

import java.lang.management.ManagementFactory;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.reference.Course;
import org.loomproof.network.time.TimeOptions;
import org.loomproof.network.time.TimeSolver;
import org.loomproof.network.time.Trace;

/** Our side of a course: how far out it is and how long it takes. */
final class CourseTimer {
    private static final long ENOUGH_NANOS = 100_000_000;
    private static final int WARM_UPS = 10;
    private static final double EXACT_TOLERANCE = 1e-7;
    private static final int EXACT_STEPS = 10_000;

    /** From one tolerance tried to the next: eight to a power of ten. */
    private static final double CLOSER = Math.pow(10, -0.125);

    private final Course course;
    private final TimeSolver solver;
    private final Trace exactTrace;
    private final CourseRun exact;

    /** A tolerance that was tried, with what came out. */
    record Tried(double tolerance, int steps, double errorVolts) {}

    CourseTimer(Course course) {
        this.course = course;
        solver = TimeSolver.of(course.network());
        exactTrace =
                run(TimeOptions.USUAL.withTolerance(EXACT_TOLERANCE).withLongestStep(course.seconds() / EXACT_STEPS));
        exact = CourseRun.of(exactTrace);
    }

    private Trace run(TimeOptions options) {
        return solver.run(course.timeline(), course.seconds(), options).finishedTrace();
    }

    Network network() {
        return course.network();
    }

    Trace exactTrace() {
        return exactTrace;
    }

    CourseRun exact() {
        return exact;
    }

    /** The loosest tolerance at which it is out by no more. */
    Tried loosest(double errorVolts) {
        for (double tolerance = 0.1; tolerance > EXACT_TOLERANCE; tolerance *= CLOSER) {
            Trace trace = run(TimeOptions.USUAL.withTolerance(tolerance));
            double error = CourseRun.of(trace).errorVolts(exact, exactTrace.jumps());
            if (error <= errorVolts) {
                return new Tried(tolerance, trace.steps(), error);
            }
        }
        throw new IllegalStateException("never as close as " + errorVolts + " V");
    }

    void warmUp(Tried tried) {
        for (int k = 0; k < WARM_UPS; k++) {
            micros(tried);
        }
    }

    /** Microseconds of processor time a run. */
    double micros(Tried tried) {
        TimeOptions options = TimeOptions.USUAL.withTolerance(tried.tolerance());
        long begin = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        long spent = 0;
        int runs = 0;
        while (spent < ENOUGH_NANOS) {
            run(options);
            runs++;
            spent = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - begin;
        }
        return spent / 1e3 / runs;
    }
}
