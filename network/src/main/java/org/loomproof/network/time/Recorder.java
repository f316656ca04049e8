package org.loomproof.network.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.loomproof.network.law.Term;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.PulsedSource;
import org.loomproof.network.solve.CompanionSolver;

/** Keeps every step's three points, and adds up the energy of every branch with the weights of the method. */
final class Recorder {
    private final CompanionSolver solver;
    private final List<Trace.Sample> samples = new ArrayList<>();
    private final List<TimeEvent> events = new ArrayList<>();
    private final double[] branchJoules;
    private final double[] windingJoules;
    private final double[] startVolts;
    private final double[] startAmps;
    private final double[] innerBranchVolts;
    private final double[] endBranchVolts;
    private double storedAtStart;
    private Set<PartId> passedAtStart = Set.of();
    private double cutJoules;
    private double turnedOver;

    Recorder(CompanionSolver solver) {
        this.solver = solver;
        branchJoules = new double[solver.branchCount()];
        windingJoules = new double[solver.branchCount()];
        startVolts = new double[solver.branchCount()];
        startAmps = new double[solver.branchCount()];
        innerBranchVolts = new double[solver.branchCount()];
        endBranchVolts = new double[solver.branchCount()];
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

    /** The instant after a jump, or the first one. */
    void start(double seconds) {
        samples.add(new Trace.Sample(
                seconds, Trace.Kind.START, solver.volts().clone(), solver.amps().clone()));
        solver.branchVolts(solver.volts(), startVolts);
        System.arraycopy(solver.amps(), 0, startAmps, 0, startAmps.length);
    }

    /** A step taken. */
    void step(double from, double to, Step step) {
        double h = to - from;
        samples.add(new Trace.Sample(
                from + Step.INNER * h, Trace.Kind.INNER, step.innerVolts.clone(), step.innerAmps.clone()));
        double[] amps = solver.amps();
        samples.add(new Trace.Sample(to, Trace.Kind.END, solver.volts().clone(), amps.clone()));
        solver.branchVolts(step.innerVolts, innerBranchVolts);
        solver.branchVolts(solver.volts(), endBranchVolts);
        for (int b = 0; b < branchJoules.length; b++) {
            double joules = h
                    * (Step.WEIGHT_START * (startVolts[b] * startAmps[b] + innerBranchVolts[b] * step.innerAmps[b])
                            + Step.WEIGHT_END * endBranchVolts[b] * amps[b]);
            branchJoules[b] += joules;
            Term term = solver.term(b);
            double ohms = ohms(term);
            if (ohms > 0) {
                windingJoules[b] += h
                        * ohms
                        * (Step.WEIGHT_START * (startAmps[b] * startAmps[b] + step.innerAmps[b] * step.innerAmps[b])
                                + Step.WEIGHT_END * amps[b] * amps[b]);
                turnedOver += Math.abs(joules);
            }
            startVolts[b] = endBranchVolts[b];
        }
        System.arraycopy(amps, 0, startAmps, 0, startAmps.length);
    }

    /** The resistance inside a branch that stores; zero for all others. */
    private static double ohms(Term term) {
        return switch (term) {
            case Term.Coil coil -> coil.ohms();
            case Term.Capacitance capacitance -> capacitance.seriesOhms();
            case Term.Conductance c -> 0;
            case Term.Throw t -> 0;
            case Term.Junction j -> 0;
            case Term.Filament f -> 0;
            case Term.Channel c -> 0;
        };
    }

    Trace trace(double storedAtEnd) {
        Network network = solver.network();
        double delivered = 0;
        double dissipated = cutJoules;
        double[] partJoules = new double[network.parts().size()];
        for (int b = 0; b < branchJoules.length; b++) {
            int part = solver.partOf(b);
            partJoules[part] += branchJoules[b];
            Part each = network.parts().get(part);
            boolean source = each instanceof Battery || each instanceof PulsedSource;
            if (source) {
                delivered -= branchJoules[b];
            } else {
                dissipated += ohms(solver.term(b)) > 0 ? windingJoules[b] : branchJoules[b];
            }
        }
        EnergyBalance energy = new EnergyBalance(delivered, dissipated, storedAtEnd - storedAtStart, turnedOver);
        return new Trace(solver, samples, events, energy, partJoules, passedAtStart);
    }
}
