package org.loomproof.network.solve;

/**
 * How far a tangent may miss where the network about it is firm. A current of δ amps that is missed between two nodes of R
 * ohms moves no voltage by more than R δ, which for a lamp fed by milliohms is far less than δ over its slope.
 */
final class Firmness {
    private final Factorisation factorisation;

    Firmness(Factorisation factorisation) {
        this.factorisation = factorisation;
    }

    /** Whether a tangent may miss its curve by so many amps. */
    boolean allows(Tangents tangents, int k, double missAmps, Trust trust) {
        double size = Math.abs(missAmps);
        if (size > trust.mostMissAmps(tangents.touchAmps[k])) {
            return false;
        }
        double[] ohms = factorisation.ohms;
        return size * (ohms[tangents.from[k]] + ohms[tangents.to[k]]) <= trust.errorVolts;
    }
}
