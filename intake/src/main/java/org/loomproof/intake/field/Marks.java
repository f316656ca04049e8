package org.loomproof.intake.field;

import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.loomproof.intake.decode.Passage;

/** Reads marks of doubt, for which side of the wheel a line holds, and that there is no such circuit. */
public final class Marks {

    private static final Lexicon WORDS = Lexicon.read(Marks.class, "marks.words");
    private static final Pattern QUERY = Pattern.compile("[(\\[]?\\s*\\?+\\s*[)\\]]?");

    private Marks() {}

    /** True when the text carries a mark of doubt; all of them are claimed. */
    public static boolean doubt(Claims claims) {
        boolean doubted = claimAll("doubt", claims);
        Matcher query = QUERY.matcher(claims.open());
        while (query.find()) {
            claims.claim(query.start(), query.end());
            doubted = true;
        }
        return doubted;
    }

    /** {@code LHD}, {@code RHD}, or empty when the text holds for both. */
    public static String steering(Claims claims) {
        boolean left = claimAll("left-hand-drive", claims);
        boolean right = claimAll("right-hand-drive", claims);
        if (left == right) {
            return "";
        }
        return left ? "LHD" : "RHD";
    }

    /** From and to of the marks for one side and for the other, in the order of the text; empty unless each stands there once. */
    public static List<int[]> bothSides(Passage text) {
        List<Hit> hits = WORDS.find(Word.of(text.folded()));
        List<Hit> left = exact("left-hand-drive", hits);
        List<Hit> right = exact("right-hand-drive", hits);
        return left.size() == 1 && right.size() == 1
                ? Stream.of(left.getFirst(), right.getFirst())
                        .sorted(Comparator.comparingInt(Hit::from))
                        .map(hit -> new int[] {hit.from(), hit.to()})
                        .toList()
                : List.of();
    }

    /**
     * True when a stretch between two marks says that there is no such thing: it is nothing but words for that, begins with a
     * no that counts nothing, or ends with words for it. What says so is claimed.
     */
    public static boolean absent(Claims claims) {
        boolean absent = false;
        if (claims.hits(WORDS).stream().noneMatch(Hit::isExact)) {
            return false;
        }
        for (int[] segment : Segments.of(claims.open())) {
            List<Word> words = claims.words().stream()
                    .filter(word -> word.from() >= segment[0] && word.to() <= segment[1])
                    .toList();
            List<Hit> all = WORDS.find(words);
            List<Hit> hits = exact("absent", all);
            boolean whole = !hits.isEmpty()
                    && words.stream()
                            .allMatch(word ->
                                    hits.stream().anyMatch(hit -> hit.from() <= word.from() && word.to() <= hit.to()));
            List<Hit> none = exact("none", all);
            boolean begins = words.size() > 1
                    && !none.isEmpty()
                    && none.getFirst().from() == words.getFirst().from()
                    && !words.get(1).isNumber();
            List<Hit> behind = exact("behind", all);
            boolean ends = !behind.isEmpty()
                    && behind.getLast().to() == words.getLast().to()
                    && behind.getLast().from() > words.getFirst().from();
            if (whole || begins || ends) {
                (whole ? hits : begins ? none.subList(0, 1) : List.of(behind.getLast()))
                        .forEach(hit -> claims.claim(hit.from(), hit.to()));
                absent = true;
            }
        }
        return absent;
    }

    private static List<Hit> exact(String idea, List<Hit> hits) {
        return hits.stream().filter(hit -> hit.isExact() && hit.means(idea)).toList();
    }

    private static boolean claimAll(String idea, Claims claims) {
        List<Hit> hits = exact(idea, claims.hits(WORDS));
        hits.forEach(hit -> claims.claim(hit.from(), hit.to()));
        return !hits.isEmpty();
    }
}
