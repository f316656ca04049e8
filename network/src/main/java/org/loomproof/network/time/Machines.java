package org.loomproof.network.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.PartId;
import org.loomproof.network.solve.CompanionSolver;
import org.loomproof.network.time.Logic.Awaited;

/** The logic of one run, each piece in its course. */
final class Machines {
    private record Running(Logic logic, Logic.Course course) {}

    private final CompanionSolver solver;
    private final List<Running> all = new ArrayList<>();

    Machines(CompanionSolver solver, List<Logic> logic) {
        this.solver = solver;
        logic.forEach(each -> all.add(new Running(each, each.begin(solver.network()))));
    }

    /** The setting with all outputs as the logic drives them. */
    Setting worked(Setting setting) {
        Setting worked = setting;
        for (Running each : all) {
            Set<PartId> on = each.course.outputsOn();
            for (PartId output : each.logic.outputs()) {
                worked = on.contains(output) ? worked.on(output) : worked.off(output);
            }
        }
        return worked;
    }

    /** How far the nearest voltage that is waited for still is from being there; zero or less once there. */
    double margin() {
        double least = Double.POSITIVE_INFINITY;
        for (Running each : all) {
            for (Awaited awaited : each.course.awaited()) {
                least = Math.min(least, margin(awaited));
            }
        }
        return least;
    }

    private double margin(Awaited awaited) {
        double[] volts = solver.volts();
        return awaited.marginVolts(volts[solver.rank(awaited.at())] - volts[solver.rank(awaited.against())]);
    }

    /** When time moves something next, or infinity. */
    double nextTimer() {
        double next = Double.POSITIVE_INFINITY;
        for (Running each : all) {
            next = Math.min(next, each.course.due());
        }
        return next;
    }

    /** Takes one step of every piece that has one to take; whether any had. */
    boolean move(double seconds, List<TimeEvent> events) {
        boolean moved = false;
        for (Running each : all) {
            Optional<String> entered = each.course.move(seconds, awaited -> margin(awaited) <= 0);
            if (entered.isPresent()) {
                events.add(new TimeEvent.StateEntered(seconds, each.logic.name(), entered.get()));
                moved = true;
            }
        }
        return moved;
    }
}
