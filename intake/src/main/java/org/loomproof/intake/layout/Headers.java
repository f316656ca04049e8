package org.loomproof.intake.layout;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.loomproof.intake.field.Hit;
import org.loomproof.intake.field.Lexicon;
import org.loomproof.intake.field.Word;

/** Knows what people write over columns, in front of colons, and for "same as above". */
final class Headers {

    private static final Lexicon WORDS = Lexicon.read(Headers.class, "headers.words");
    private static final String DITTO = "ditto";

    private Headers() {}

    /** The kind that the whole of a short text names. */
    static Optional<ColumnKind> kind(String folded) {
        return idea(folded).filter(i -> !i.equals(DITTO)).map(i -> ColumnKind.valueOf(i.toUpperCase(Locale.ROOT)));
    }

    static boolean isDitto(String folded) {
        String text = folded.strip();
        return text.matches("[\"',,\u00ab\u00bb\u3003]{1,2}|-?\\s*[\"]\\s*-?|\\^+")
                || idea(folded).filter(DITTO::equals).isPresent();
    }

    private static Optional<String> idea(String folded) {
        List<Word> words = Word.of(folded);
        if (words.isEmpty() || words.size() > 4) {
            return Optional.empty();
        }
        List<Hit> hits = WORDS.find(words);
        boolean whole = hits.size() == 1
                && hits.getFirst().match() == Hit.Match.EXACT
                && hits.getFirst().from() == words.getFirst().from()
                && hits.getFirst().to() == words.getLast().to();
        return whole ? Optional.of(hits.getFirst().ideas().getFirst()) : Optional.empty();
    }
}
