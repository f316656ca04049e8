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

    /** What went into each branch, and what was lost in the resistance inside those that store. */
    private final double[] joules;

    private final double[] lost;
    private double turnedOver;

    Energies(CompanionSolver layout, List<Trace.Sample> samples) {
        this.layout = layout;
        joules = new double[layout.branchCount()];
        lost = new double[layout.branchCount()];
        for (int k = 0; k + 2 < samples.size(); k++) {
            if (samples.get(k + 1).kind() == Trace.Kind.INNER) {
                add(samples.get(k), samples.get(k + 1), samples.get(k + 2));
            }
        }
    }

    private void add(Trace.Sample start, Trace.Sample inner, Trace.Sample end) {
        double ofEnds = (end.seconds() - start.seconds()) * Step.WEIGHT_START;
        double ofLast = (end.seconds() - start.seconds()) * Step.WEIGHT_END;
        for (int b = 0; b < joules.length; b++) {
            double first = start.amps(b);
            double middle = inner.amps(b);
            double last = end.amps(b);
            double taken =
                    ofEnds * (volts(b, start) * first + volts(b, inner) * middle) + ofLast * volts(b, end) * last;
            joules[b] += taken;
            double ohms = ohms(layout.term(b));
            if (ohms > 0) {
                lost[b] += ohms * (ofEnds * (first * first + middle * middle) + ofLast * last * last);
                turnedOver += Math.abs(taken);
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
