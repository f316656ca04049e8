package org.loomproof.workshop.planner.grammar;

import java.util.List;
import org.loomproof.workshop.planner.grammar.Word.Buffering;

/** Names and order of words that read, one for each kind of source. */
public final class ReadingCatalogue {

    private ReadingCatalogue() {}

    /** True where a relay or a buffer stands between. */
    public static boolean hasActivePart(Word word) {
        return !word.coils().isEmpty() || word.buffer() != Buffering.NONE;
    }

    /** Where words stand in the order of the trade: joints and diodes, then a relay on the wire, then resistors, then buffers. */
    public static int rank(List<Word> words) {
        return words.stream().mapToInt(ReadingCatalogue::rank).max().orElse(0);
    }

    private static int rank(Word word) {
        if (word.buffer() != Buffering.NONE) {
            return word.coils().isEmpty() ? 4 : 5;
        }
        if (!word.coils().isEmpty()) {
            return 2;
        }
        return word.through().resistor() ? 3 : word.through().hasDiode() ? 1 : 0;
    }

    /** The message key of their names together. */
    public static String key(List<Word> words) {
        List<String> keys = words.stream().map(ReadingCatalogue::key).distinct().toList();
        if (keys.size() == 1) {
            return keys.getFirst();
        }
        List<Word> active =
                words.stream().filter(ReadingCatalogue::hasActivePart).toList();
        if (active.isEmpty()) {
            return words.stream().anyMatch(word -> word.pull() != Pull.NONE)
                    ? "coupling.pull-up"
                    : "coupling.isolation-diodes";
        }
        return active.getFirst().buffer() == Buffering.NONE
                ? "coupling.diodes-and-inverting-relay"
                : "coupling.diodes-and-reading-buffer";
    }

    private static String key(Word word) {
        if (hasActivePart(word)) {
            return word.buffer() == Buffering.NONE ? "coupling.inverting-relay" : "coupling.reading-buffer";
        }
        if (word.pull() != Pull.NONE) {
            return "coupling.pull-up";
        }
        return word.through().resistor()
                ? "coupling.series-resistor"
                : word.through().hasDiode() ? "coupling.isolation-diodes" : "coupling.straight";
    }
}
