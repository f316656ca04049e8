package org.loomproof.intake.field;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.apache.commons.text.similarity.LevenshteinDistance;

/**
 * The known word that a misspelt one most likely is: one letter wrong, too many, missing, or two changed places; two letters
 * in long words. When two known words are as near, it is neither.
 */
final class Misspelling {

    private static final int USUAL_SHORTEST = 5;
    private static final int LONG = 9;
    private static final int LONGEST = 30;

    private final Map<Integer, Set<String>> byLength = new HashMap<>();
    private final int shortest;

    Misspelling(Set<String> known) {
        this(known, USUAL_SHORTEST);
    }

    /** For words of at least that many letters; shorter ones are too near to too many others. */
    Misspelling(Set<String> known, int shortest) {
        this.shortest = shortest;
        for (String word : known) {
            if (word.length() >= shortest - 1) {
                byLength.computeIfAbsent(word.length(), l -> new TreeSet<>()).add(word);
            }
        }
    }

    Optional<String> meant(String word) {
        if (word.length() < shortest || word.length() > LONGEST) {
            return Optional.empty();
        }
        int most = word.length() >= LONG ? 2 : 1;
        LevenshteinDistance distance = new LevenshteinDistance(2);
        int nearest = most + 1;
        String found = "";
        boolean several = false;
        for (String known : near(word, most)) {
            int off = distance.apply(word, known);
            if (off == 2 && most == 1 && isTurned(word, known)) {
                off = 1;
            }
            if (off < 0 || off > most) {
                continue;
            }
            several = off == nearest || (off > nearest && several);
            if (off < nearest) {
                nearest = off;
                found = known;
                several = false;
            }
        }
        return found.isEmpty() || several ? Optional.empty() : Optional.of(found);
    }

    /** Known words of about that length that begin alike: hardly anybody gets the first letter wrong. */
    private List<String> near(String word, int most) {
        return IntStream.rangeClosed(word.length() - most, word.length() + most)
                .boxed()
                .flatMap(length -> byLength.getOrDefault(length, Set.of()).stream())
                .filter(known -> known.charAt(0) == word.charAt(0))
                .toList();
    }

    private static boolean isTurned(String one, String other) {
        char[] a = one.toCharArray();
        char[] b = other.toCharArray();
        Arrays.sort(a);
        Arrays.sort(b);
        return Arrays.equals(a, b);
    }
}
