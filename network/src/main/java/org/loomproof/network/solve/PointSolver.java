package org.loomproof.network.solve;

import org.loomproof.network.netlist.Setting;

/** Voltages and currents for a given setting with given contact positions, checked. Owns all work arrays. */
final class PointSolver {
    /** What tangents may miss when the usual closeness fails the check: a thousandth of it, then nothing. */
    private static final double[] CLOSER_MISS_VOLTS = {2e-11, 0};

    private final Layout layout;
    private final BranchSums sums;
    private final Factorisation factorisation;
    private final Curves curves;
    private final Recollection recollection;
    private final BranchStates states;
    private final NewtonIteration newton;
    private final KirchhoffCheck check;
    private final SolverOptions options;
    private final double[] volts;

    /**
     * A solver that has solved nothing yet.
     *
     * @param roughVolts how far any voltage may be out in a rough search
     */
    PointSolver(Layout layout, SolverOptions options, double roughVolts) {
        this.layout = layout;
        this.options = options;
        sums = new BranchSums(layout);
        factorisation = new Factorisation(layout, sums);
        curves = new Curves(layout, new Tangents(layout, sums, options, roughVolts), new Firmness(factorisation));
        recollection = new Recollection(layout.neighbourhoods, curves);
        states = new BranchStates(layout, sums, curves, recollection);
        newton = new NewtonIteration(layout, sums, factorisation, curves);
        check = new KirchhoffCheck(layout, sums, curves);
        volts = new double[layout.rankCount + 1];
    }

    void apply(Setting setting, SettingChange change) {
        states.apply(setting, change);
    }

    /** Whether voltages were found for these contact positions, as closely as {@link Trust#rough} says. */
    boolean solveRoughly(ContactPattern contacts) {
        states.move(contacts);
        recollection.recall();
        return newton.solveRoughly(volts);
    }

    /** Whether the voltages last found roughly could be found exactly. */
    boolean solve() {
        return curves.bend(volts) == 0 || newton.solve(volts);
    }

    /** Whether Kirchhoff's current law holds at the voltages last found; tightens the tangents until it does. */
    boolean checked() {
        factorisation.backSubstituteRest(volts);
        if (holds()) {
            return true;
        }
        for (double missVolts : CLOSER_MISS_VOLTS) {
            newton.polish(volts, missVolts);
            if (holds()) {
                return true;
            }
        }
        return false;
    }

    /** Carries the positions of all contacts into the equations. */
    void move(ContactPattern contacts) {
        states.move(contacts);
    }

    /** Lets a branch carry i = siemens v + amps, until its part is set or moved again. */
    void stand(int branch, double siemens, double amps) {
        sums.set(branch, siemens, amps);
    }

    /** Moves tangents to where voltages that are only guessed have their curves. */
    void guess(double[] rankVolts) {
        curves.bend(rankVolts);
    }

    /** Whether voltages were found for the branches as they stand now. */
    boolean solveAfresh() {
        return newton.solve(volts);
    }

    /** As {@link #solveAfresh}, but roughly. */
    boolean solveAfreshRoughly() {
        return newton.solveRoughly(volts);
    }

    /** Finds the voltages that Newton's iteration does not ask for. */
    void fill() {
        factorisation.backSubstituteRest(volts);
    }

    /** The voltages last found, by rank; live. */
    double[] volts() {
        return volts;
    }

    /** What every branch stands for now, i = siemens v + amps. */
    void takeStraight(double[] siemens, double[] amps) {
        for (int b = 0; b < siemens.length; b++) {
            siemens[b] = sums.siemens(b);
            amps[b] = sums.amps(b, 0);
        }
    }

    /** The current of a branch at these voltages: that of the tangent, which lies closer than a curve read off. */
    double branchAmps(int branch) {
        return sums.amps(branch, volts[layout.from[branch]] - volts[layout.to[branch]]);
    }

    private boolean holds() {
        return check.holds(volts, options.kirchhoffAmps(), options.kirchhoffPart());
    }

    /** The voltages across the ends of all thresholds, in size where polarity does not count. */
    void takeDrives(double[] drive) {
        for (int t = 0; t < drive.length; t++) {
            drive[t] = thresholdVolts(t);
        }
    }

    double thresholdVolts(int threshold) {
        double drive = volts[layout.thresholdPlus[threshold]] - volts[layout.thresholdMinus[threshold]];
        return layout.isEitherPolarity[threshold] ? Math.abs(drive) : drive;
    }

    /** The point last found and checked. */
    OperatingPoint point(Setting setting, ContactPattern contacts) {
        double[] curveAmps = new double[layout.curved.length];
        for (int k = 0; k < curveAmps.length; k++) {
            curveAmps[k] = branchAmps(layout.curved[k]);
        }
        return new OperatingPoint(layout, setting, volts.clone(), curveAmps, contacts, check.worstAmps());
    }

    double residualAmps() {
        factorisation.backSubstituteRest(volts);
        holds();
        return check.worstAmps();
    }

    /** Linear solutions and nodes eliminated so far: a measure of work that does not depend on the machine. */
    long work() {
        return newton.steps() + factorisation.eliminations();
    }
}
