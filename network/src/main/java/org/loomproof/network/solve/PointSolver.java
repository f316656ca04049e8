package org.loomproof.network.solve;

import org.loomproof.network.netlist.Setting;

/** Voltages and currents for a given setting with given contact positions, checked. Owns all work arrays. */
final class PointSolver {
    /** How much closer tangents are held when the usual closeness fails the check. */
    private static final double[] STRICTNESS = {1, 1e-3, 0};

    /**
     * While contacts still move, tangents are trusted over a hundred times the usual 30 uV: each then stands for its curve to
     * 3 mV squared over 2 n Vt, 0.2 mV.
     */
    private static final double ROUGHNESS = 100;

    /** Many such misses together stay below this. */
    static final double ROUGH_VOLTS = 0.05;

    private final Layout layout;
    private final Factorisation factorisation;
    private final Curves curves;
    private final BranchStates states;
    private final NewtonIteration newton;
    private final KirchhoffCheck check;
    private final SolverOptions options;
    private final double[] volts;
    private final double[] amps;

    PointSolver(Layout layout, FrontLayout fronts, SolverOptions options) {
        this.layout = layout;
        this.options = options;
        factorisation = new Factorisation(fronts);
        curves = new Curves(layout);
        states = new BranchStates(layout, factorisation, curves);
        newton = new NewtonIteration(layout, factorisation, curves);
        check = new KirchhoffCheck(layout, factorisation, curves);
        volts = new double[layout.rankCount + 1];
        amps = new double[layout.branchCount];
    }

    void apply(Setting setting) {
        states.apply(setting);
    }

    /** Whether voltages were found for these contact positions, to much better than {@link #ROUGH_VOLTS}. */
    boolean solveRoughly(ContactPattern contacts) {
        states.move(contacts);
        curves.strictness(ROUGHNESS);
        boolean found = newton.solve(volts);
        curves.strictness(1);
        return found;
    }

    /** Whether the voltages last found roughly could be found exactly. */
    boolean solve() {
        return curves.bend(volts, factorisation) == 0 || newton.solve(volts);
    }

    /** Whether Kirchhoff's current law holds at the voltages last found; tightens the tangents until it does. */
    boolean checked() {
        for (double strictness : STRICTNESS) {
            if (strictness < 1) {
                curves.strictness(strictness);
                newton.polish(volts);
                curves.strictness(1);
            }
            if (check.holds(volts, amps, options.kirchhoffAmps(), options.kirchhoffPart())) {
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
        if (factorisation.conductance(branch) != siemens || factorisation.amps(branch) != amps) {
            factorisation.set(branch, siemens, amps);
        }
    }

    /** Whether voltages were found for the branches as they stand now. */
    boolean solveAfresh() {
        return newton.solve(volts);
    }

    /** The voltages last found, by rank; live. */
    double[] volts() {
        return volts;
    }

    /** The branch currents last checked; live. */
    double[] amps() {
        return amps;
    }

    double thresholdVolts(int threshold) {
        double drive = volts[layout.thresholdPlus[threshold]] - volts[layout.thresholdMinus[threshold]];
        return layout.thresholds[threshold].eitherPolarity() ? Math.abs(drive) : drive;
    }

    /** The point last found and checked. */
    OperatingPoint point(Setting setting, ContactPattern contacts) {
        return new OperatingPoint(layout, setting, volts.clone(), amps.clone(), contacts, check.worstAmps());
    }

    double residualAmps() {
        check.holds(volts, amps, options.kirchhoffAmps(), options.kirchhoffPart());
        return check.worstAmps();
    }

    /** Linear solutions and fronts computed so far: a measure of work that does not depend on the machine. */
    long work() {
        return newton.steps() + factorisation.frontsComputed();
    }
}
