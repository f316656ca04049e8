package org.loomproof.network.time;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.network.part.LogicInput;
import org.loomproof.network.part.LogicLevel;
import org.loomproof.network.part.Part;
import org.loomproof.network.solve.CompanionSolver;

/** Notes when a logic input comes to read another level, along the curve of each step. */
final class Readings {
    /** A step is looked at in so many pieces, each taken to be straight. */
    private static final int PIECES = 16;

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
    private final Method method;
    private final List<TimeEvent> events;
    private final double[] keptVolts;
    private final List<Watched> inputs = new ArrayList<>();

    Readings(CompanionSolver solver, Method method, List<TimeEvent> events) {
        this.solver = solver;
        this.method = method;
        keptVolts = new double[method.kept.length];
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

    /** Reads all inputs over a step, with the voltages of its stages but the last. */
    void follow(double from, double to, double[][] stageVolts) {
        for (Watched each : inputs) {
            boolean isSteady = true;
            LogicLevel level = each.input.level(each.volts);
            for (int k = 0; k < keptVolts.length; k++) {
                int stage = method.kept[k];
                keptVolts[k] = each.volts(stage == method.last() ? solver.volts() : stageVolts[stage]);
                isSteady &= each.input.level(keptVolts[k]) == level;
            }
            for (int piece = 1; piece <= PIECES && !isSteady; piece++) {
                double before = (piece - 1.0) / PIECES;
                double after = (double) piece / PIECES;
                between(each, from + before * (to - from), voltsAt(before), from + after * (to - from), voltsAt(after));
            }
            each.volts = keptVolts[keptVolts.length - 1];
        }
    }

    private double voltsAt(double part) {
        double sum = 0;
        for (int k = 0; k < keptVolts.length; k++) {
            sum += method.weightAt(k, part) * keptVolts[k];
        }
        return sum;
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
