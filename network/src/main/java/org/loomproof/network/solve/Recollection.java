package org.loomproof.network.solve;

import java.util.Arrays;

/**
 * Where each curve stood the last time the branches near it were on and off as they are now. Newton's iteration begins there:
 * a lamp switched on again is nearly as bright as it was. Only a guess; what is found does not depend on it.
 */
final class Recollection {
    private static final int STATES = 1 << Neighbourhoods.NEAREST;

    /** Bits of a state that may be otherwise when the very state was never met: all but those of the nearest branches. */
    private static final int FAR = STATES >> 2;

    private final Neighbourhoods neighbourhoods;
    private final Curves curves;
    private final Tangents tangents;
    private final int[] state;
    private final double[] volts;
    private final double[] amps;
    private final int[] changed;
    private final boolean[] isChanged;
    private int changedCount;

    Recollection(Neighbourhoods neighbourhoods, Curves curves) {
        this.neighbourhoods = neighbourhoods;
        this.curves = curves;
        this.tangents = curves.tangents;
        int count = tangents.count;
        state = new int[count];
        volts = new double[count * STATES];
        amps = new double[count * STATES];
        Arrays.fill(volts, Double.NaN);
        changed = new int[count];
        isChanged = new boolean[count];
    }

    /** A branch was off and is on, or the other way round. */
    void switched(int branch) {
        int[] watchers = neighbourhoods.watchers(branch);
        int[] bits = neighbourhoods.bits(branch);
        for (int w = 0; w < watchers.length; w++) {
            int k = watchers[w];
            leave(k);
            state[k] ^= bits[w];
        }
    }

    /** A curve has begun or ceased to count. */
    void leave(int k) {
        if (!isChanged[k]) {
            isChanged[k] = true;
            changed[changedCount++] = k;
            if (tangents.active[k]) {
                int slot = k * STATES + state[k];
                volts[slot] = tangents.touchVolts[k];
                amps[slot] = tangents.touchAmps[k];
            }
        }
    }

    /** Puts the tangents whose surroundings have changed to where they stood when these were so before. */
    void recall() {
        for (int c = 0; c < changedCount; c++) {
            int k = changed[c];
            isChanged[k] = false;
            if (tangents.active[k]) {
                int slot = find(k);
                if (slot >= 0 && volts[slot] != tangents.touchVolts[k]) {
                    curves.touch(k, volts[slot], amps[slot]);
                }
            }
        }
        changedCount = 0;
    }

    private int find(int k) {
        int slot = k * STATES + state[k];
        for (int far = 0; far < FAR; far++) {
            if (!Double.isNaN(volts[slot ^ far])) {
                return slot ^ far;
            }
        }
        return -1;
    }
}
