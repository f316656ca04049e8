package org.loomproof.intake.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomproof.intake.decode.Passage;

/**
 * Reads for which vehicles a line holds: those with some trim or option, or of some years. What is said is kept as written, for only a person knows
 * whether the car before them is one of these.
 */
public final class Validity {

    private static final Lexicon WORDS = Lexicon.read(Validity.class, "marks.words");
    private static final String YEAR = "(?:19|20)\\d{2}";
    private static final Pattern YEARS = Pattern.compile(
            "\\b" + YEAR + "\\s?-\\s?(?:'?\\d{2}|" + YEAR + ")\\b|\\b" + YEAR + "\\s?(?:\\+|onwards?\\b|on\\b)");
    private static final int MOST_WORDS = 8;

    private Validity() {}

    /** What the text says of the vehicles it holds for, as written; all of it is claimed. Empty when it says nothing of the kind. */
    public static List<Passage> read(Claims claims) {
        List<Passage> bound = new ArrayList<>();
        boolean said = claims.hits(WORDS).stream().anyMatch(Hit::isExact);
        for (int[] segment : said ? Segments.of(claims.open()) : List.<int[]>of()) {
            List<Word> words = claims.words().stream()
                    .filter(word -> word.from() >= segment[0] && word.to() <= segment[1])
                    .toList();
            List<Hit> hits = WORDS.find(words);
            for (int i = 0; i < hits.size(); i++) {
                Hit hit = hits.get(i);
                if (hit.isExact() && hit.means("bound") && number(words, hit.from()) <= MOST_WORDS) {
                    claimed(hit.from(), words.getLast().to(), claims, bound);
                    break;
                }
                year(hit, words).ifPresent(year -> claimed(hit.from(), year.to(), claims, bound));
            }
        }
        Matcher years = YEARS.matcher(claims.open());
        while (claims.hasNumber() && years.find()) {
            claimed(years.start(), years.end(), claims, bound);
        }
        return bound;
    }

    /** How many words stand from there on. */
    private static long number(List<Word> words, int from) {
        return words.stream().filter(word -> word.from() >= from).count();
    }

    private static Optional<Word> year(Hit hit, List<Word> words) {
        return hit.isExact() && hit.means("year-bound")
                ? words.stream()
                        .filter(word -> word.from() >= hit.to())
                        .findFirst()
                        .filter(word -> word.text().matches(YEAR))
                : Optional.empty();
    }

    private static void claimed(int from, int to, Claims claims, List<Passage> bound) {
        bound.add(claims.passage().slice(from, to));
        claims.claim(from, to);
    }

    /** True when the text is bound to some vehicles. */
    public static boolean isBound(Passage text) {
        return !read(new Claims(text)).isEmpty();
    }
}
