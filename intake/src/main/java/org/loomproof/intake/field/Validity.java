package org.loomproof.intake.field;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomproof.intake.decode.Passage;

/**
 * Reads for which vehicles a line holds: those with some trim or option, or of some years. What is said is kept as written: whether the car at hand
 * is one of these is asked later, of what is known of it or of a person.
 */
public final class Validity {

    private static final Lexicon WORDS = Lexicon.read(Validity.class, "marks.words");
    private static final String YEAR = "(?:19|20)\\d{2}";
    private static final Pattern YEARS = Pattern.compile(
            "\\b" + YEAR + "\\s?-\\s?(?:'?\\d{2}|" + YEAR + ")\\b|\\b" + YEAR + "\\s?(?:\\+|onwards?\\b|on\\b)");
    private static final int MOST_WORDS = 8;

    /** A trim by its letters: {@code LX only}, {@code LX/EX only}. */
    private static final Pattern TRIM =
            Pattern.compile("(?<![\\w/.-])([A-Z]{1,3}\\d{0,2}(?:\\s?[/,&+]\\s?[A-Z]{1,3}\\d{0,2}){0,3})\\s+(\\p{L}+)");

    private static final Pattern PARTED = Pattern.compile("\\s?[/,&+]\\s?");

    /** Letters that stand for something else in front of "only". */
    private static final Set<String> NO_TRIM = words("no-trim");

    private static final Set<String> ONLY = words("only");
    private static final Set<String> ARTICLES = words("article");
    private static final Set<String> LEADING_ON = words("leads-on");

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
                if (hit.isExact() && hit.means("bound") && number(words, hit.from(), end(hit, words)) <= MOST_WORDS) {
                    claimed(hit.from(), end(hit, words), claims, bound);
                    break;
                }
                year(hit, words).ifPresent(year -> claimed(hit.from(), year.to(), claims, bound));
            }
        }
        Matcher trim = TRIM.matcher(claims.passage().text());
        while (trim.find()) {
            boolean open = claims.open().substring(trim.start(), trim.end()).indexOf(Claims.CLAIMED) < 0;
            if (open && !trims(trim).isEmpty()) {
                claimed(trim.start(), trim.end(), claims, bound);
            }
        }
        Matcher years = YEARS.matcher(claims.open());
        while (claims.hasNumber() && years.find()) {
            claimed(years.start(), years.end(), claims, bound);
        }
        return bound;
    }

    /** The trims that a bound asks for by their letters: {@code LX} and {@code EX} of {@code LX/EX only}; none where it asks for anything else. */
    public static Set<String> trims(String bound) {
        Matcher trim = TRIM.matcher(bound);
        while (trim.find()) {
            Set<String> trims = trims(trim);
            if (!trims.isEmpty()) {
                return trims;
            }
        }
        return Set.of();
    }

    private static Set<String> trims(Matcher found) {
        Set<String> letters = Set.copyOf(Arrays.asList(PARTED.split(found.group(1), -1)));
        boolean binds = ONLY.contains(Passage.fold(found.group(2)))
                && letters.stream().map(Passage::fold).noneMatch(NO_TRIM::contains);
        return binds ? letters : Set.of();
    }

    private static Set<String> words(String idea) {
        return Lexicon.listPhrases(Validity.class, "bound.words", idea);
    }

    private static long number(List<Word> words, int from, int to) {
        return words.stream()
                .filter(word -> word.from() >= from && word.to() <= to)
                .count();
    }

    /** Where the bound ends: with its stretch, or before the article with which the sentence goes on, "only with power locks the door wire is green". */
    private static int end(Hit hit, List<Word> words) {
        for (int i = 2; i < words.size(); i++) {
            Word before = words.get(i - 1);
            boolean article = ARTICLES.contains(words.get(i).text());
            if (article && before.from() >= hit.to() && !LEADING_ON.contains(before.text())) {
                return before.to();
            }
        }
        return words.getLast().to();
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
