package org.loomproof.network.time;

import java.util.List;
import org.loomproof.network.law.Term;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PulsedSource;
import org.loomproof.network.solve.CompanionSolver;

/** The energy of every branch over a run, added up with the weights of the method. */
final class Energies {
    private final CompanionSolver layout;
    private final Method method;

    /** What went into each branch, and what was lost in the resistance inside those that store. */
    private final double[] joules;

    private final double[] lost;
    private double turnedOver;

    Energies(CompanionSolver layout, Method method, List<Trace.Sample> samples) {
        this.method = method;
        this.layout = layout;
        joules = new double[layout.branchCount()];
        lost = new double[layout.branchCount()];
        for (int k = 0; k + 1 < samples.size(); k++) {
            if (samples.get(k).kind() != Trace.Kind.INNER && samples.get(k + 1).kind() == Trace.Kind.INNER) {
                add(samples.subList(k, k + method.kept.length));
            }
        }
    }

    private void add(List<Trace.Sample> step) {
        double seconds = step.getLast().seconds() - step.getFirst().seconds();
        for (int b = 0; b < joules.length; b++) {
            double taken = 0;
            double squares = 0;
            for (int k = 0; k < step.size(); k++) {
                double amps = step.get(k).amps(b);
                taken += method.weight(k) * volts(b, step.get(k)) * amps;
                squares += method.weight(k) * amps * amps;
            }
            joules[b] += seconds * taken;
            double ohms = ohms(layout.term(b));
            if (ohms > 0) {
                lost[b] += seconds * ohms * squares;
                turnedOver += Math.abs(seconds * taken);
            }
        }
    }

    private double volts(int branch, Trace.Sample sample) {
        return sample.volts()[layout.rankFrom(branch)] - sample.volts()[layout.rankTo(branch)];
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

    double ofPart(int part) {
        double sum = 0;
        for (int b = layout.firstBranch(part); b < layout.firstBranch(part + 1); b++) {
            sum += joules[b];
        }
        return sum;
    }

    /**
     * The balance of the whole run.
     *
     * @param storedChange energy held at the end less that held at the beginning
     * @param cut energy that parts taken out of the network took with them
     */
    EnergyBalance balance(double storedChange, double cut) {
        double delivered = 0;
        double dissipated = cut;
        for (int b = 0; b < joules.length; b++) {
            Part part = layout.network().parts().get(layout.partOf(b));
            if (part instanceof Battery || part instanceof PulsedSource) {
                delivered -= joules[b];
            } else {
                dissipated += ohms(layout.term(b)) > 0 ? lost[b] : joules[b];
            }
        }
        return new EnergyBalance(delivered, dissipated, storedChange, turnedOver);
    }
}
