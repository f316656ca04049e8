package org.loomproof.network.time;

/**
 * Where the energy of a run went, joules.
 *
 * @param delivered by batteries and pulsed sources at their terminals, less what they took back
 * @param dissipated in all other parts, and in what was taken out of the network with its current
 * @param storedChange in coils, capacitors and turning motors, end less beginning
 * @param turnedOver the sum of all energies that went in or out of stores: what the imbalance is to be compared with
 */
public record EnergyBalance(double delivered, double dissipated, double storedChange, double turnedOver) {
    /** Sources less dissipated less stored change: ideally zero. */
    public double imbalance() {
        return delivered - dissipated - storedChange;
    }

    /** Whether the imbalance is at most this part of the larger of energy delivered and energy turned over. */
    public boolean holdsWithin(double part) {
        return Math.abs(imbalance()) <= part * Math.max(Math.abs(delivered), turnedOver);
    }
}
