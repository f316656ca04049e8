package org.loomproof.intake.field;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads marks of doubt, and for which side of the wheel a line holds. */
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

    private static boolean claimAll(String idea, Claims claims) {
        List<Hit> hits = WORDS.find(claims.words()).stream()
                .filter(h -> h.means(idea) && h.match() == Hit.Match.EXACT)
                .toList();
        hits.forEach(hit -> claims.claim(hit.from(), hit.to()));
        return !hits.isEmpty();
    }
}
