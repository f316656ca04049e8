package org.loomproof.workshop.planner.cut;

import java.util.ArrayList;
import java.util.List;

/**
 * One relay's changeover contact in a cut wire, or on it.
 *
 * @param lead which of the coupling's leads works it
 * @param lie how it lies
 * @param gives what its third terminal gives
 */
public record Throw(int lead, Lie lie, Given gives) {

    /** How a contact lies in a wire that runs from what works to what switches. */
    public enum Lie {
        /** 30 to what works, on through 87a; 87 gives. */
        BREAK,
        /** 30 to what switches, on through 87a; 87 gives. */
        BREAK_TURNED,
        /** 30 to what works, on through 87; 87a gives. */
        MAKE,
        /** 30 to what switches, on through 87; 87a gives. */
        MAKE_TURNED,
        /** 30 on the whole wire, 87 gives. */
        BESIDE,
        /** 30 on the whole wire, 87a gives. */
        BESIDE_AT_REST
    }

    public Throw {
        if (gives == Given.NOTHING && lie != Lie.BREAK && lie != Lie.MAKE) {
            throw new IllegalArgumentException("where nothing is given, 30 may as well lie to what works: " + lie);
        }
    }

    /** Every contact of one lead. With nothing given it does not matter which way round a contact lies. */
    static List<Throw> all(int lead) {
        List<Throw> all = new ArrayList<>();
        for (Lie lie : Lie.values()) {
            for (Given gives : Given.values()) {
                if (gives != Given.NOTHING || lie == Lie.BREAK || lie == Lie.MAKE) {
                    all.add(new Throw(lead, lie, gives));
                }
            }
        }
        return all;
    }

    /** True where the wire runs through it, false where it lies beside the wire. */
    boolean isThrough() {
        return lie != Lie.BESIDE && lie != Lie.BESIDE_AT_REST;
    }

    /** Whether the wire is whole here while the relay is pulled in, or rests. */
    boolean joins(boolean worked) {
        return switch (lie) {
            case BREAK, BREAK_TURNED -> !worked;
            case MAKE, MAKE_TURNED -> worked;
            case BESIDE, BESIDE_AT_REST -> true;
        };
    }

    /** The poles that it gives its 30 while the relay is pulled in, or rests. */
    int givesBits(boolean worked) {
        boolean gives = switch (lie) {
            case BREAK, BREAK_TURNED, BESIDE -> worked;
            case MAKE, MAKE_TURNED, BESIDE_AT_REST -> !worked;
        };
        return gives ? this.gives.bit() : 0;
    }

    /** True where 30 lies to what works. */
    boolean isTowardsLoad() {
        return lie == Lie.BREAK || lie == Lie.MAKE;
    }
}
