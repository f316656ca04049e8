package org.loomproof.network.solve;

import org.loomproof.network.netlist.Setting;

/** Voltages and currents for a given setting with given contact positions, checked. Owns all work arrays. */
final class PointSolver {
    /** How much closer tangents are held when the usual closeness fails the check. */
    private static final double[] STRICTNESS = {1, 1e-3, 0};

    private final Layout layout;
    private final Factorisation factorisation;
    private final Curves curves;
    private final BranchStates states;
    private final NewtonIteration newton;
    private final KirchhoffCheck check;
    private final SolverOptions options;
    private final double[] volts;
    private final double[] amps;

    PointSolver(Layout layout, SolverOptions options) {
        this.layout = layout;
        this.options = options;
        factorisation = new Factorisation(new FrontLayout(layout.rankCount, layout.from, layout.to));
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

    /** Whether voltages were found for these contact positions. */
    boolean solve(ContactPattern contacts) {
        states.move(contacts);
        return newton.solve(volts);
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

    double thresholdVolts(int threshold) {
        double drive = volts[layout.thresholdPlus[threshold]] - volts[layout.thresholdMinus[threshold]];
        return layout.thresholds[threshold].eitherPolarity() ? Math.abs(drive) : drive;
    }

    /** The point last found and checked. */
    OperatingPoint point(Setting setting, ContactPattern contacts) {
        return new OperatingPoint(layout, setting, volts.clone(), amps.clone(), contacts, factorisation.conductances(layout.branchCount), check.worstAmps());
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
