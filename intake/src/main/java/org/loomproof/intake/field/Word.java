package org.loomproof.intake.field;

import java.util.ArrayList;
import java.util.List;

/**
 * A run of letters or a run of digits in a text.
 *
 * @param text folded: small letters without accents
 * @param from offset of its first character
 * @param to offset behind its last character
 */
public record Word(String text, int from, int to) {

    /** The words of a folded text, in order; signs between them are nobody's. */
    public static List<Word> of(String folded) {
        List<Word> words = new ArrayList<>();
        int at = 0;
        while (at < folded.length()) {
            int sort = sort(folded.charAt(at));
            int end = at + 1;
            while (end < folded.length() && sort(folded.charAt(end)) == sort) {
                end++;
            }
            if (sort != 0) {
                words.add(new Word(folded.substring(at, end), at, end));
            }
            at = end;
        }
        return words;
    }

    private static int sort(char c) {
        if (Character.isLetter(c)) {
            return 1;
        }
        return Character.isDigit(c) ? 2 : 0;
    }

    boolean isNumber() {
        return Character.isDigit(text.charAt(0));
    }
}
