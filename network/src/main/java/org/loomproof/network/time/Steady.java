package org.loomproof.network.time;

import org.loomproof.network.solve.CompanionSolver;

/** What the branches that do not move carry until something is switched again: i = g v + j. */
final class Steady {
    final Moving moving;
    private final double[] siemens;
    private final double[] sourceAmps;

    /** As they are now. */
    Steady(Moving moving) {
        this.moving = moving;
        CompanionSolver layout = moving.layout;
        siemens = new double[layout.branchCount()];
        sourceAmps = new double[layout.branchCount()];
        layout.takeStraight(siemens, sourceAmps);
    }

    double amps(int branch, double[] volts) {
        CompanionSolver layout = moving.layout;
        double across = volts[layout.rankFrom(branch)] - volts[layout.rankTo(branch)];
        return siemens[branch] * across + sourceAmps[branch];
    }
}
