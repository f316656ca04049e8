package org.loomproof.workshop.planner.grammar;

/** What opens and closes a tie. A relay has one changeover contact: its make and its break each stand in one tie at most. */
public enum Gate {
    ALWAYS(0, false),
    MAKE_1(1, true),
    BREAK_1(1, false),
    MAKE_2(2, true),
    BREAK_2(2, false),
    /** The output of the buffer, which goes to ground. */
    BUFFER(0, true);

    private final int relay;
    private final boolean make;

    Gate(int relay, boolean make) {
        this.relay = relay;
        this.make = make;
    }

    /** 1 or 2 for a relay's contact; else 0. */
    int relay() {
        return relay;
    }

    /** True for what closes when it is worked. */
    boolean make() {
        return make;
    }
}
