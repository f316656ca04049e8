package org.loomproof.workshop.brief.text;

import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.loomproof.workshop.words.Phrase;

/** The words a file may use, and the nearest of them to one it may not. */
public final class Words {

    private Words() {}

    /** The word for a constant in files: {@code NOT_TO_BE_TOUCHED} is {@code not-to-be-touched}. */
    public static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** All constants of the enum by their words, in their order. */
    public static <E extends Enum<E>> Map<String, E> all(Class<E> type) {
        Map<String, E> words = new LinkedHashMap<>();
        EnumSet.allOf(type).forEach(constant -> words.put(of(constant), constant));
        return words;
    }

    /** "Did you mean …?" when one accepted word is near enough to be a slip of the pen, otherwise an empty phrase. */
    public static Phrase hint(String found, Collection<String> accepted) {
        return nearest(found, accepted)
                .map(word -> Phrase.of("problem.hint.did-you-mean", word))
                .orElse(Phrase.of("problem.hint.none"));
    }

    /** The accepted word that needs the fewest changes, first of equals; empty when it needs too many to be a slip. */
    public static Optional<String> nearest(String found, Collection<String> accepted) {
        String wanted = found.strip().toLowerCase(Locale.ROOT);
        if (wanted.length() > 60) {
            return Optional.empty();
        }
        String best = "";
        int least = Integer.MAX_VALUE;
        for (String word : accepted) {
            int changes = changes(wanted, word.toLowerCase(Locale.ROOT));
            int bearable = Math.max(1, Math.min(wanted.length(), word.length()) / 3);
            if (changes < least && changes <= bearable) {
                best = word;
                least = changes;
            }
        }
        return best.isEmpty() ? Optional.empty() : Optional.of(best);
    }

    /**
     * How many letters must be put in, taken out, replaced or swapped with their neighbour to make one word of the other
     * (optimal string alignment distance).
     */
    static int changes(String from, String to) {
        int[][] d = new int[from.length() + 1][to.length() + 1];
        for (int i = 0; i <= from.length(); i++) {
            for (int j = 0; j <= to.length(); j++) {
                d[i][j] = i == 0 || j == 0 ? i + j : cheapest(d, from, to, i, j);
            }
        }
        return d[from.length()][to.length()];
    }

    private static int cheapest(int[][] d, String from, String to, int i, int j) {
        boolean same = from.charAt(i - 1) == to.charAt(j - 1);
        int least = Math.min(d[i - 1][j - 1] + (same ? 0 : 1), Math.min(d[i - 1][j], d[i][j - 1]) + 1);
        boolean swapped =
                i > 1 && j > 1 && from.charAt(i - 1) == to.charAt(j - 2) && from.charAt(i - 2) == to.charAt(j - 1);
        return swapped ? Math.min(least, d[i - 2][j - 2] + 1) : least;
    }
}
