package org.loomproof.network.time;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.network.part.LogicInput;
import org.loomproof.network.part.LogicLevel;
import org.loomproof.network.part.Part;
import org.loomproof.network.solve.CompanionSolver;

/** Notes when a logic input comes to read another level; within a step the time is taken from a straight line. */
final class Readings {
    private static final class Watched {
        final LogicInput input;
        final int plus;
        final int minus;
        double volts = Double.NaN;

        Watched(LogicInput input, int plus, int minus) {
            this.input = input;
            this.plus = plus;
            this.minus = minus;
        }

        double volts(double[] rankVolts) {
            return rankVolts[plus] - rankVolts[minus];
        }
    }

    private final CompanionSolver solver;
    private final List<TimeEvent> events;
    private final List<Watched> inputs = new ArrayList<>();

    Readings(CompanionSolver solver, List<TimeEvent> events) {
        this.solver = solver;
        this.events = events;
        for (Part part : solver.network().parts()) {
            if (part instanceof LogicInput input) {
                inputs.add(new Watched(input, solver.rank(input.input()), solver.rank(input.ground())));
            }
        }
    }

    /** Reads all inputs after a jump; before the first one nothing was read. */
    void jump(double seconds) {
        for (Watched each : inputs) {
            double volts = each.volts(solver.volts());
            LogicLevel level = each.input.level(volts);
            if (Double.isNaN(each.volts) || each.input.level(each.volts) != level) {
                events.add(new TimeEvent.Reads(seconds, each.input.id(), level));
            }
            each.volts = volts;
        }
    }

    /** Reads all inputs over a step. */
    void follow(double from, double to, double[] innerVolts) {
        double inner = from + Step.INNER * (to - from);
        for (Watched each : inputs) {
            double middle = each.volts(innerVolts);
            double last = each.volts(solver.volts());
            between(each, from, each.volts, inner, middle);
            between(each, inner, middle, to, last);
            each.volts = last;
        }
    }

    private void between(Watched each, double from, double fromVolts, double to, double toVolts) {
        LogicLevel before = each.input.level(fromVolts);
        LogicLevel after = each.input.level(toVolts);
        if (before == after) {
            return;
        }
        boolean up = toVolts > fromVolts;
        double threshold = after == LogicLevel.HIGH || (after == LogicLevel.BETWEEN && !up)
                ? each.input.highAboveVolts()
                : each.input.lowBelowVolts();
        double share = (threshold - fromVolts) / (toVolts - fromVolts);
        events.add(new TimeEvent.Reads(from + share * (to - from), each.input.id(), after));
    }
}
