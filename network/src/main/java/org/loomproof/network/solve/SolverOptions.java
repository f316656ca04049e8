package org.loomproof.network.solve;

/**
 * How closely and how widely a {@link Solver} looks.
 *
 * @param kirchhoffAmps currents must sum to zero at every node to this many amps
 * @param kirchhoffPart plus this part of the largest current at the node
 * @param otherStablePoints whether each settled answer is searched for further stable ones
 */
public record SolverOptions(double kirchhoffAmps, double kirchhoffPart, boolean otherStablePoints) {
    /** 1 uA plus 1e-6, further stable points reported. */
    public static final SolverOptions USUAL = new SolverOptions(1e-6, 1e-6, true);

    public SolverOptions {
        if (!(kirchhoffAmps > 0) || !(kirchhoffPart >= 0)) {
            throw new IllegalArgumentException(
                    "tolerances must be above zero: " + kirchhoffAmps + ", " + kirchhoffPart);
        }
    }

    /** Only the answer asked for: for sweeps over many settings. */
    public SolverOptions withoutOtherStablePoints() {
        return new SolverOptions(kirchhoffAmps, kirchhoffPart, false);
    }

    /** Currents summing to zero more closely. */
    public SolverOptions withKirchhoff(double amps, double part) {
        return new SolverOptions(amps, part, otherStablePoints);
    }
}
