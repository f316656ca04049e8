package org.loomproof.workshop.prover.damage;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * What there is to see in one situation, sign by sign.
 *
 * @param signs how surely each is there or not
 * @param leastAmps what the battery gives at least, whichever point of rest the network is at
 * @param mostAmps what it gives at most
 */
record Seen(List<Sureness> signs, double leastAmps, double mostAmps) {

    /** An ammeter in the battery's lead shows this much more at once; common practice, no published source. */
    private static final double PLAIN_AMPS = 0.01;

    Seen {
        signs = List.copyOf(signs);
    }

    /** What is sure whichever of two points of rest the network is at. */
    Seen or(Seen other) {
        List<Sureness> both = new ArrayList<>();
        for (int k = 0; k < signs.size(); k++) {
            both.add(signs.get(k).or(other.signs.get(k)));
        }
        return new Seen(both, Math.min(leastAmps, other.leastAmps), Math.max(mostAmps, other.mostAmps));
    }

    /** The signs that are surely there. */
    BitSet there() {
        BitSet there = new BitSet(signs.size());
        for (int k = 0; k < signs.size(); k++) {
            there.set(k, signs.get(k).there() >= 0);
        }
        return there;
    }

    /** The signs that are surely not there. */
    BitSet absent() {
        BitSet absent = new BitSet(signs.size());
        for (int k = 0; k < signs.size(); k++) {
            absent.set(k, signs.get(k).absent() >= 0);
        }
        return absent;
    }

    /**
     * By how much a sign surely differs from what is seen at a vehicle as planned; negative where it does not.
     *
     * @param standingCurrent the place of the sign that an ammeter gives
     */
    double differsBy(Seen planned, int sign, int standingCurrent) {
        if (sign == standingCurrent) {
            return Math.max(leastAmps - planned.mostAmps, planned.leastAmps - mostAmps) - PLAIN_AMPS;
        }
        Sureness before = planned.signs.get(sign);
        Sureness now = signs.get(sign);
        return Math.max(Math.min(before.there(), now.absent()), Math.min(before.absent(), now.there()));
    }

    /** The signs that surely differ from what is seen at a vehicle as planned. */
    BitSet differing(Seen planned, int standingCurrent) {
        BitSet differing = new BitSet(signs.size());
        for (int k = 0; k < signs.size(); k++) {
            differing.set(k, differsBy(planned, k, standingCurrent) >= 0);
        }
        return differing;
    }
}
