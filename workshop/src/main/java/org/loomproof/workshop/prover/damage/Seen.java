package org.loomproof.workshop.prover.damage;

import java.util.BitSet;

/**
 * What there is to see in one situation, sign by sign.
 *
 * @param there the signs that are surely there
 * @param absent the signs that are surely not there
 * @param batteryAmps what the battery gives
 */
record Seen(BitSet there, BitSet absent, double batteryAmps) {

    /** An ammeter in the battery's lead shows this much more at once; common practice, no published source. */
    private static final double PLAIN_AMPS = 0.01;

    /** What is sure whichever of two points of rest the network is at. */
    Seen or(Seen other) {
        BitSet bothThere = (BitSet) there.clone();
        bothThere.and(other.there);
        BitSet bothAbsent = (BitSet) absent.clone();
        bothAbsent.and(other.absent);
        return new Seen(bothThere, bothAbsent, Math.min(batteryAmps, other.batteryAmps));
    }

    /** The signs that surely differ from what is seen at a vehicle as planned. */
    BitSet differing(Seen planned, int standingCurrent) {
        BitSet gone = (BitSet) planned.there.clone();
        gone.and(absent);
        BitSet come = (BitSet) planned.absent.clone();
        come.and(there);
        gone.or(come);
        gone.set(standingCurrent, Math.abs(batteryAmps - planned.batteryAmps) > PLAIN_AMPS);
        return gone;
    }
}
