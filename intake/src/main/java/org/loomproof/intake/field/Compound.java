package org.loomproof.intake.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Parts a word that is put together from known ones, as German does: {@code türkontakt}. Nothing may be left over. */
final class Compound {

    private static final int SHORTEST_PART = 3;
    private static final int LONGEST_WORD = 40;
    private static final List<String> LINKS = List.of("", "s", "n", "en", "e");

    private Compound() {}

    /** One hit a part, in order; empty when the word cannot be parted without a rest. */
    static List<Hit> parts(Word word, Map<String, List<String>> known) {
        if (word.text().length() > LONGEST_WORD || word.text().length() < 2 * SHORTEST_PART) {
            return List.of();
        }
        return from(0, word, known);
    }

    private static List<Hit> from(int start, Word word, Map<String, List<String>> known) {
        String text = word.text();
        for (int end = text.length(); end - start >= SHORTEST_PART; end--) {
            if (start == 0 && end == text.length()) {
                continue;
            }
            List<String> ideas = known.get(text.substring(start, end));
            if (ideas == null) {
                continue;
            }
            Hit head = new Hit(ideas, word.from() + start, word.from() + end, Hit.Match.COMPOUND);
            for (String link : LINKS) {
                int next = end + link.length();
                if (!text.startsWith(link, end)) {
                    continue;
                }
                if (next == text.length()) {
                    return List.of(new Hit(ideas, head.from(), word.to(), Hit.Match.COMPOUND));
                }
                List<Hit> rest = from(next, word, known);
                if (!rest.isEmpty()) {
                    List<Hit> parts = new ArrayList<>(List.of(head));
                    parts.addAll(rest);
                    return parts;
                }
            }
        }
        return List.of();
    }
}
