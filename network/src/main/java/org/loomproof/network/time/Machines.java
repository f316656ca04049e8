package org.loomproof.network.time;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.LogicInput;
import org.loomproof.network.part.PartId;
import org.loomproof.network.solve.CompanionSolver;
import org.loomproof.network.time.StateMachine.After;
import org.loomproof.network.time.StateMachine.Exit;
import org.loomproof.network.time.StateMachine.State;
import org.loomproof.network.time.StateMachine.WhenReads;

/** The state machines of one run, each in its state. */
final class Machines {
    private static final class Running {
        final StateMachine machine;
        State state;
        double since;

        Running(StateMachine machine) {
            this.machine = machine;
            this.state = machine.states().getFirst();
        }
    }

    private final CompanionSolver solver;
    private final List<Running> all = new ArrayList<>();

    Machines(CompanionSolver solver, List<StateMachine> machines) {
        this.solver = solver;
        machines.forEach(machine -> all.add(new Running(machine)));
    }

    /** The setting with all outputs as the machines drive them. */
    Setting worked(Setting setting) {
        Setting worked = setting;
        for (Running each : all) {
            for (PartId output : each.machine.outputs()) {
                worked = each.state.outputsOn().contains(output) ? worked.on(output) : worked.off(output);
            }
        }
        return worked;
    }

    /** How far the nearest input that is waited for still is from its level, volts; zero or less once there. */
    double margin() {
        double least = Double.POSITIVE_INFINITY;
        for (Running each : all) {
            for (Exit exit : each.state.exits()) {
                if (exit instanceof WhenReads reads) {
                    least = Math.min(least, margin(reads));
                }
            }
        }
        return least;
    }

    private double margin(WhenReads reads) {
        LogicInput input = (LogicInput) solver.network().part(reads.input());
        double volts = solver.volts()[solver.rank(input.input())] - solver.volts()[solver.rank(input.ground())];
        return switch (reads.level()) {
            case HIGH -> input.highAboveVolts() - volts;
            case LOW -> volts - input.lowBelowVolts();
            case BETWEEN -> Math.max(input.lowBelowVolts() - volts, volts - input.highAboveVolts());
        };
    }

    /** When the next timer ends, or infinity. */
    double nextTimer() {
        double next = Double.POSITIVE_INFINITY;
        for (Running each : all) {
            for (Exit exit : each.state.exits()) {
                if (exit instanceof After after) {
                    next = Math.min(next, each.since + after.seconds());
                }
            }
        }
        return next;
    }

    /** Takes one exit of every machine that has one to take; which inputs moved them, or the machine's own name. */
    boolean move(double seconds, List<TimeEvent> events) {
        boolean moved = false;
        for (Running each : all) {
            for (Exit exit : each.state.exits()) {
                boolean taken = switch (exit) {
                    case WhenReads reads -> margin(reads) <= 0;
                    case After after -> each.since + after.seconds() <= seconds;
                };
                if (taken) {
                    each.state = each.machine.state(exit.to());
                    each.since = seconds;
                    events.add(new TimeEvent.StateEntered(seconds, each.machine.name(), exit.to()));
                    moved = true;
                    break;
                }
            }
        }
        return moved;
    }
}
