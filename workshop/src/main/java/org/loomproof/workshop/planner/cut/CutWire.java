package org.loomproof.workshop.planner.cut;

import java.util.List;

/**
 * One wire that is cut, as far as poles decide.
 *
 * @param rest what its far end is held at while nobody works it
 * @param hand what a hand does to that end
 * @param wanted what each lead, on by itself, wants of what works
 */
public record CutWire(Given rest, Hand hand, List<Given> wanted) {

    /** What a hand does to the end of a wire towards its switch. */
    public enum Hand {
        /** Nothing: it lies at a pole for good. */
        NONE,
        /** Brings it to either pole, and lets it come back. */
        COMES_BACK,
        /** Puts it to either pole, where it stays while an output works. */
        STAYS
    }

    public CutWire {
        wanted = List.copyOf(wanted);
    }

    /** What the end towards the switch may ever be held at. */
    List<Given> ever() {
        return hand == Hand.NONE ? List.of(rest) : List.of(Given.values());
    }

    /** What it may be held at while an output works and has to have its way. */
    List<Given> atWork() {
        return hand == Hand.STAYS ? List.of(Given.values()) : List.of(rest);
    }
}
