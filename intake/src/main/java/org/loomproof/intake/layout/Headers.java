package org.loomproof.intake.layout;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.loomproof.intake.field.Hit;
import org.loomproof.intake.field.Lexicon;
import org.loomproof.intake.field.Word;

/** Knows what people write over columns, in front of colons, and for "same as above". */
final class Headers {

    private static final Lexicon WORDS = Lexicon.read(Headers.class, "headers.words");
    private static final String DITTO = "ditto";
    private static final String ANY = "any";
    private static final String PERHAPS_POLARITY = "perhaps-polarity";
    private static final Pattern SIGNS = Pattern.compile("\\s*\\(?\\+\\s?/\\s?-\\)?\\s*");

    private static final Pattern MARKS_OF_DITTO =
            Pattern.compile("[\"',,\u00ab\u00bb\u3003]{1,2}|-?\\s*[\"]\\s*-?|\\^+");

    private Headers() {}

    /** The kind that the whole of a short text names. */
    static Optional<ColumnKind> kind(String folded) {
        if (SIGNS.matcher(folded).matches()) {
            return Optional.of(ColumnKind.POLARITY);
        }
        return idea(folded)
                .filter(i -> !i.equals(DITTO) && !i.equals(ANY))
                .map(i -> i.equals(PERHAPS_POLARITY) ? ColumnKind.POLARITY.name() : i)
                .map(i -> ColumnKind.valueOf(i.toUpperCase(Locale.ROOT)));
    }

    /** True for a word that stands over columns and does not say which: a column of wires may hold their names or their colours. */
    static boolean isOpen(String folded) {
        return idea(folded).filter(ANY::equals).isPresent();
    }

    /** True for a word that stands over polarities, unless another column is named so more plainly: then it stands over names. */
    static boolean isPerhapsPolarity(String folded) {
        return idea(folded).filter(PERHAPS_POLARITY::equals).isPresent();
    }

    static boolean isDitto(String folded) {
        String text = folded.strip();
        return MARKS_OF_DITTO.matcher(text).matches()
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
