package org.loomproof.workshop.planner.grammar;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A series of parts between one end and the target, each kind at most once. Their order does not matter to direct current; two
 * resistors in a row are one, two diodes in a row are one or block; a second contact in a row says what the first says.
 *
 * @param joined false where there is no tie
 * @param diode which way current may run
 * @param resistor whether a resistor stands in it
 * @param gate what opens and closes it
 */
public record Tie(boolean joined, Way diode, boolean resistor, Gate gate) {

    /** Which way current may run. */
    public enum Way {
        BOTH,
        TO_TARGET,
        FROM_TARGET
    }

    /** No tie. */
    public static final Tie NONE = new Tie(false, Way.BOTH, false, Gate.ALWAYS);

    /** A wire. */
    public static final Tie WIRE = new Tie(true, Way.BOTH, false, Gate.ALWAYS);

    /** A diode. */
    public static Tie diode(Way way) {
        return new Tie(true, way, false, Gate.ALWAYS);
    }

    /** A resistor behind a gate. */
    public static Tie resistor(Gate gate) {
        return new Tie(true, Way.BOTH, true, gate);
    }

    /** A contact, or the output of a buffer. */
    public static Tie gated(Gate gate) {
        return new Tie(true, Way.BOTH, false, gate);
    }

    /** Every tie with one of those gates, and none. */
    static List<Tie> all(List<Gate> gates) {
        List<Tie> all = new ArrayList<>(List.of(NONE));
        for (Gate gate : gates) {
            for (Way way : Way.values()) {
                all.add(new Tie(true, way, false, gate));
                all.add(new Tie(true, way, true, gate));
            }
        }
        return all;
    }

    Tie withoutDiode() {
        return new Tie(joined, Way.BOTH, resistor, gate);
    }

    Tie withoutResistor() {
        return new Tie(joined, diode, false, gate);
    }

    /** No tie, and this one without its diode or its resistor. */
    Stream<Tie> simpler() {
        return Stream.of(NONE, withoutDiode(), withoutResistor()).filter(tie -> !tie.equals(this));
    }

    boolean hasDiode() {
        return diode != Way.BOTH;
    }

    int diodes() {
        return hasDiode() ? 1 : 0;
    }

    int resistors() {
        return resistor ? 1 : 0;
    }
}
