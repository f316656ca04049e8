package org.loomproof.network.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import org.loomproof.network.law.PartEquations;
import org.loomproof.network.law.Term;
import org.loomproof.network.law.Threshold;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.PartFault;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Part;

/**
 * One instant of a network whose contacts the caller moves, and in which the caller lets branches stand for i = g v + j: the
 * <em>companion</em> of a capacitance or an inductance over a step in time, a source at its present voltage, a filament at
 * its present temperature. Laid out once; from then on only what changes is computed again. A branch stands so until its
 * part is set anew by {@link #configure}. Units: volts, amps, siemens. Not for sharing between threads.
 */
public final class CompanionSolver {
    private final Layout layout;
    private final PointSolver points;
    private final List<Term> terms;
    private final boolean[] counts;
    private final SettingChange change;

    private CompanionSolver(Layout layout, List<Term> terms, double stageVolts) {
        this.layout = layout;
        this.terms = terms;
        points = new PointSolver(layout, SolverOptions.USUAL, Math.min(stageVolts, Trust.ROUGH_VOLTS));
        counts = new boolean[layout.branchCount];
        change = new SettingChange(layout.network.parts().size());
    }

    /** A solver of a network, laid out for it. */
    public static CompanionSolver of(Network network) {
        List<Term> terms = new ArrayList<>();
        for (Part part : network.parts()) {
            terms.addAll(PartEquations.of(part).terms());
        }
        return new CompanionSolver(new Layout(network, CompanionSolver::straightened), List.copyOf(terms), 0);
    }

    /**
     * Another solver of the same network, as it was when new; what was laid out is shared.
     *
     * @param stageVolts how far any voltage may be out where a solution is not checked, as far as that is looser than an answer
     */
    public CompanionSolver fresh(double stageVolts) {
        return new CompanionSolver(layout, terms, stageVolts);
    }

    /** A filament is as straight as any resistance for as long as its temperature holds. */
    private static Term straightened(Term term) {
        return term instanceof Term.Filament lamp
                ? new Term.Conductance(
                        lamp.from(), lamp.to(), lamp.curve().hotSiemens(), 0, lamp.when(), Term.Stated.NOTHING)
                : term;
    }

    /** The network it solves. */
    public Network network() {
        return layout.network;
    }

    /** How many branches the parts' terms make, in the order of parts and of their terms. */
    public int branchCount() {
        return layout.branchCount;
    }

    /** What a branch is, as the law of its part states it. */
    public Term term(int branch) {
        return terms.get(branch);
    }

    /** The part a branch belongs to, by its place in the network. */
    public int partOf(int branch) {
        return layout.partOf[branch];
    }

    /** The first branch of a part; the number of all branches for the place after the last part. */
    public int firstBranch(int part) {
        return layout.firstBranch[part];
    }

    /** How many thresholds the parts have, in the order of parts. */
    public int thresholdCount() {
        return layout.thresholds.length;
    }

    /** A threshold by its number. */
    public Threshold threshold(int threshold) {
        return layout.thresholds[threshold];
    }

    /** The part a threshold belongs to, by its place in the network. */
    public int thresholdPart(int threshold) {
        return layout.thresholdPart[threshold];
    }

    /** How many voltages {@link #volts()} holds; the last is the chassis, 0 V. */
    public int rankCount() {
        return layout.rankCount + 1;
    }

    /** Where {@link #volts()} holds a node's voltage. */
    public int rank(Node node) {
        return layout.rankOfNode[layout.network.indexOf(node)];
    }

    /** Begins from the voltages of a point of the same network. */
    public void begin(OperatingPoint point) {
        for (int n = 0; n < layout.rankOfNode.length; n++) {
            points.volts()[layout.rankOfNode[n]] = point.nodeVolts(n);
        }
    }

    /** Whether a threshold is passed at a point of the same network. */
    public static boolean isPassed(OperatingPoint point, int threshold) {
        return point.contacts().isPassed(threshold);
    }

    /** Sets all parts and moves all contacts; for each threshold, whether it is passed. */
    public void configure(Setting setting, IntPredicate isPassed) {
        change.to(setting);
        points.apply(setting, change);
        points.move(ContactPattern.of(layout.thresholds.length, isPassed));
        for (int b = 0; b < counts.length; b++) {
            int part = layout.partOf[b];
            int threshold = layout.thresholdOfPart[part];
            counts[b] = setting.fault(part) == PartFault.NONE
                    && terms.get(b).when().counts(setting.isOn(part), threshold >= 0 && isPassed.test(threshold));
        }
    }

    /** Whether a branch is there at all: its part whole, its condition met. */
    public boolean counts(int branch) {
        return counts[branch];
    }

    /** Lets a branch that counts carry i = siemens v + amps from its first end to its second. */
    public void stand(int branch, double siemens, double amps) {
        points.stand(branch, siemens, amps);
    }

    /** Begins the next solution at voltages by rank that are thought to come near it. */
    public void guess(double[] rankVolts) {
        points.guess(rankVolts);
    }

    /** Whether voltages were found that satisfy Kirchhoff's current law at every node, to 1 uA + 1e-6. */
    public boolean solve() {
        return points.solveAfresh() && points.checked();
    }

    /** Whether voltages were found, from which a checked solution is then sought: roughly, and not checked by Kirchhoff's law. */
    public boolean solveUnchecked() {
        boolean found = points.solveAfreshRoughly();
        points.fill();
        return found;
    }

    /** Voltages last found, by rank. Live: copy what is to be kept. */
    public double[] volts() {
        return points.volts();
    }

    /** Current of a branch at these voltages. */
    public double branchAmps(int branch) {
        return points.branchAmps(branch);
    }

    /** Writes for every branch the i = siemens v + amps that it stands for now. */
    public void takeStraight(double[] siemens, double[] amps) {
        points.takeStraight(siemens, amps);
    }

    /** Ranks of a branch's two ends: where {@link #volts()} holds their voltages. */
    public int rankFrom(int branch) {
        return layout.from[branch];
    }

    /** Rank of the second end, see {@link #rankFrom}. */
    public int rankTo(int branch) {
        return layout.to[branch];
    }

    /** Voltage from a branch's first end to its second, as last found. */
    public double branchVolts(int branch) {
        double[] volts = points.volts();
        return volts[layout.from[branch]] - volts[layout.to[branch]];
    }

    /** The voltage across a threshold's two ends, in size where polarity does not count. */
    public double thresholdVolts(int threshold) {
        return points.thresholdVolts(threshold);
    }

    /** Linear solutions and fronts computed so far: work that does not depend on the machine. */
    public long work() {
        return points.work();
    }
}
