package org.loomproof.workshop.planner.grammar;

import java.util.LinkedHashMap;
import java.util.Map;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.planner.coupling.Target;
import org.loomproof.workshop.planner.grammar.Word.Buffering;

/** Words that have a name in the trade. It names and orders; what may be built says the grammar alone. */
public final class Catalogue {

    private static final Map<Word, String> NAMES = new LinkedHashMap<>();

    static {
        NAMES.put(Word.STRAIGHT, "straight");
        NAMES.put(Word.clamped(), "straight-clamped");
        NAMES.put(Word.step(), "step-resistor");
        for (Side output : Side.values()) {
            NAMES.put(Word.diode(output), "isolation-diodes");
        }
        for (boolean isolated : new boolean[] {false, true}) {
            for (Side output : Side.values()) {
                for (Side gives : Side.values()) {
                    NAMES.put(Word.relay(output, gives, isolated), isolated ? "relay-isolated" : "relay");
                }
                NAMES.putIfAbsent(Word.stepByRelay(output), "step-resistor-by-relay");
            }
        }
    }

    /** What some are called where they work a load out of the box. */
    private static final Map<String, String> LOADS = Map.of(
            "coupling.straight", "coupling.added-load",
            "coupling.relay", "coupling.added-load-by-relay",
            "coupling.step-resistor", "coupling.added-light");

    private Catalogue() {}

    /** Where a word stands in the order of the trade; one without a name comes last. */
    public static int rank(Word word) {
        int rank = 0;
        for (Word known : NAMES.keySet()) {
            if (known.equals(word)) {
                return rank;
            }
            rank++;
        }
        return rank;
    }

    /** The message key of a word's name, by what it works. */
    static String key(Word word, Target target) {
        String key = key(word);
        return switch (target) {
            case Target.Wire wire -> key;
            case Target.Loads loads -> LOADS.getOrDefault(key, key);
        };
    }

    /** The message key of a word's name. */
    public static String key(Word word) {
        String name = NAMES.get(word);
        if (name != null) {
            return "coupling." + name;
        }
        if (word.buffer() == Buffering.NONE) {
            return "coupling.composed";
        }
        return word.coils().isEmpty() ? "coupling.buffer" : "coupling.buffered-relay";
    }
}
