package org.loomproof.network.time;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import org.loomproof.network.law.Term;
import org.loomproof.network.law.Threshold;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.PartFault;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Relay;
import org.loomproof.network.solve.CompanionSolver;

/**
 * Everything a threshold moves: relays and the wakefulness of outputs. A drive that passes its threshold <em>calls</em>; the
 * contacts follow when the armature's time is over, unless the call has ended by then. A relay's drive is the voltage across
 * the resistance of its coil, which stands for its current.
 */
final class Contacts {
    private final CompanionSolver solver;
    private final Network network;
    private final int count;
    private final int[] coil;
    private final boolean[] held;
    private final double[] ohms;
    private final boolean[] called;
    private final boolean[] passed;
    private final double[] due;

    Contacts(CompanionSolver solver) {
        this.solver = solver;
        network = solver.network();
        count = solver.thresholdCount();
        coil = new int[count];
        ohms = new double[count];
        held = new boolean[count];
        called = new boolean[count];
        passed = new boolean[count];
        due = new double[count];
        for (int t = 0; t < count; t++) {
            int first = solver.firstBranch(solver.thresholdPart(t));
            coil[t] = solver.term(first) instanceof Term.Coil ? first : -1;
        }
    }

    void begin(IntPredicate isPassed) {
        for (int t = 0; t < count; t++) {
            passed[t] = isPassed.test(t);
            called[t] = passed[t];
        }
        Arrays.fill(due, Double.NaN);
    }

    boolean isPassed(int threshold) {
        return passed[threshold];
    }

    /** The parts whose thresholds are passed now. */
    Set<PartId> passed() {
        Set<PartId> parts = new LinkedHashSet<>();
        for (int t = 0; t < count; t++) {
            if (passed[t]) {
                parts.add(network.parts().get(solver.thresholdPart(t)).id());
            }
        }
        return parts;
    }

    /** Takes over from a setting which relays are held, and where. */
    void configure(Setting setting) {
        for (int t = 0; t < count; t++) {
            int part = solver.thresholdPart(t);
            if (coil[t] >= 0) {
                double stated = setting.stated(part);
                ohms[t] = Double.isNaN(stated) ? ((Term.Coil) solver.term(coil[t])).ohms() : stated;
            }
            boolean faulty = setting.fault(part) != PartFault.NONE;
            held[t] = network.parts().get(part) instanceof Relay && (setting.isHeld(part) || faulty);
            if (held[t]) {
                passed[t] = !faulty && setting.isHeldPulledIn(part);
                called[t] = passed[t];
                due[t] = Double.NaN;
            }
        }
    }

    private double drive(int t) {
        return coil[t] >= 0 ? Math.abs(solver.branchAmps(coil[t])) * ohms[t] : solver.thresholdVolts(t);
    }

    /** How far the nearest free drive still is from calling for a change, volts; zero or less once it does. */
    double margin() {
        double least = Double.POSITIVE_INFINITY;
        for (int t = 0; t < count; t++) {
            if (!held[t]) {
                Threshold limits = solver.threshold(t);
                double drive = drive(t);
                least = Math.min(least, called[t] ? drive - limits.fallVolts() : limits.riseVolts() - drive);
            }
        }
        return least;
    }

    /** Takes note of drives that have passed their thresholds, and sets or strikes the times at which contacts move. */
    void call(double seconds, List<TimeEvent> events) {
        for (int t = 0; t < count; t++) {
            Threshold limits = solver.threshold(t);
            double drive = drive(t);
            if (held[t] || (called[t] ? drive > limits.fallVolts() : drive < limits.riseVolts())) {
                continue;
            }
            called[t] = !called[t];
            Part part = network.parts().get(solver.thresholdPart(t));
            if (part instanceof Relay relay) {
                events.add(new TimeEvent.CoilCalled(seconds, relay.id(), called[t]));
            }
            due[t] = called[t] == passed[t] ? Double.NaN : seconds + delay(part, called[t]);
        }
    }

    private static double delay(Part part, boolean calls) {
        return part instanceof Relay relay ? (calls ? relay.operateSeconds() : relay.releaseSeconds()) : 0;
    }

    /** When the next contacts move, or infinity. */
    double nextDue() {
        double next = Double.POSITIVE_INFINITY;
        for (double each : due) {
            next = each < next ? each : next;
        }
        return next;
    }

    /** Moves all contacts that are due; which parts they belong to. */
    List<PartId> move(double seconds, List<TimeEvent> events) {
        List<PartId> moved = new ArrayList<>();
        for (int t = 0; t < count; t++) {
            if (due[t] <= seconds) {
                passed[t] = called[t];
                due[t] = Double.NaN;
                PartId id = network.parts().get(solver.thresholdPart(t)).id();
                moved.add(id);
                events.add(
                        network.part(id) instanceof Relay
                                ? new TimeEvent.ContactsMoved(seconds, id, passed[t])
                                : new TimeEvent.Woke(seconds, id, passed[t]));
            }
        }
        return moved;
    }
}
