package org.loomproof.workshop.planner.grammar;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import org.loomproof.workshop.planner.grammar.Word.Buffering;

/** Walks every word within the bound, in a fixed order. What depends on poles alone is walked once for all currents. */
public final class Grammar {

    private static final Map<Drive, Enumeration> WALKED = new ConcurrentHashMap<>();

    private Grammar() {}

    /** All words that may work those targets, fewest parts first. */
    public static Enumeration of(Drive drive) {
        return WALKED.computeIfAbsent(drive, d -> {
            Map<LeftOut, Long> leftOut = new EnumMap<>(LeftOut.class);
            List<Word> words = new ArrayList<>();
            DriveJudge judge = new DriveJudge(d);
            long[] enumerated = {0};
            each(word -> {
                enumerated[0]++;
                judge.leaveOut(word)
                        .ifPresentOrElse(reason -> leftOut.merge(reason, 1L, Long::sum), () -> words.add(word));
            });
            words.sort(Comparator.comparingInt(Word::parts).thenComparing(Word::toString));
            return new Enumeration(enumerated[0], leftOut, words);
        });
    }

    /** Tells every word within the bound, once each. */
    static void each(Consumer<Word> told) {
        Walk walk = new Walk(told);
        for (Buffering buffer : Buffering.values()) {
            boolean buffered = buffer != Buffering.NONE;
            walk.take(List.of(), buffer);
            for (Coil first : Coil.beside(buffered)) {
                walk.take(List.of(first), buffer);
                Coil.beside(buffered).forEach(second -> walk.take(List.of(first, second), buffer));
                Coil.behindFirst().forEach(second -> walk.take(List.of(first, second), buffer));
            }
        }
    }

    private record Walk(Consumer<Word> told) {

        private void take(List<Coil> coils, Buffering buffer) {
            List<Tie> ties = Tie.all(gates(coils, buffer));
            List<Tie> beyondBody =
                    ties.stream().filter(tie -> tie.gate() != Gate.BUFFER).toList();
            int held = coils.stream().mapToInt(Coil::diodes).sum();
            for (Tie through : beyondBody) {
                for (Tie fromSupply : beyondBody) {
                    if (!clash(through, fromSupply)
                            && held + through.diodes() + fromSupply.diodes() <= Word.MOST_DIODES) {
                        for (Tie toBody : ties) {
                            take(new Word(through, fromSupply, toBody, coils, buffer));
                        }
                    }
                }
            }
        }

        private void take(Word word) {
            if (isWithinBound(word) && isWellFormed(word)) {
                told.accept(word);
            }
        }

        private static List<Gate> gates(List<Coil> coils, Buffering buffer) {
            List<Gate> gates = new ArrayList<>(List.of(Gate.ALWAYS));
            if (!coils.isEmpty()) {
                gates.addAll(List.of(Gate.MAKE_1, Gate.BREAK_1));
            }
            if (coils.size() > 1) {
                gates.addAll(List.of(Gate.MAKE_2, Gate.BREAK_2));
            }
            if (buffer != Buffering.NONE) {
                gates.add(Gate.BUFFER);
            }
            return gates;
        }

        private static boolean isWithinBound(Word word) {
            return word.diodes() <= Word.MOST_DIODES
                    && word.resistors() <= Word.MOST_RESISTORS
                    && word.coils().size() <= Word.MOST_RELAYS;
        }

        /** Each contact stands in one place, every relay and buffer is used, and a buffer's output goes to the body. */
        private static boolean isWellFormed(Word word) {
            Tie a = word.through();
            Tie b = word.fromSupply();
            Tie c = word.toBody();
            if (clash(a, c) || clash(b, c)) {
                return false;
            }
            List<Coil> coils = word.coils();
            boolean behindFirst = coils.size() > 1 && coils.get(1).isBehindFirst();
            if (behindFirst) {
                // The first relay's contact is in the second one's coil, and 30 cannot be on the target as well.
                if (uses(word, 1)) {
                    return false;
                }
            } else if (!coils.isEmpty() && !uses(word, 1)) {
                return false;
            }
            if (coils.size() > 1 && !uses(word, 2)) {
                return false;
            }
            return word.buffer() == Buffering.NONE
                    || c.gate() == Gate.BUFFER
                    || coils.stream().anyMatch(coil -> coil.driver() == Coil.Driver.BUFFER);
        }

        private static boolean clash(Tie one, Tie other) {
            return one.gate() != Gate.ALWAYS && one.gate() == other.gate();
        }

        private static boolean uses(Word word, int relay) {
            return word.through().gate().relay() == relay
                    || word.fromSupply().gate().relay() == relay
                    || word.toBody().gate().relay() == relay;
        }
    }
}
