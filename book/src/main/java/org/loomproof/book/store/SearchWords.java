package org.loomproof.book.store;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.card.Entries;
import org.loomproof.book.key.Key;

/**
 * The words by which a card is found, as marks that nobody can make or read without the key. Words are compared without case and
 * accents. An entry is found by each of its words and by all of them run together, so that {@code AB 123} is found as
 * {@code ab123}; one with digits is found by its last four characters as well, as people read out plates and numbers.
 */
final class SearchWords {

    private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");
    private static final Pattern NO_WORD = Pattern.compile("[^\\p{L}\\p{N}]+");
    private static final int READ_OUT = 4;

    private final Key key;

    SearchWords(Key key) {
        this.key = key;
    }

    /** Every mark of a card. */
    List<byte[]> of(CardKind kind, Entries entries) {
        List<byte[]> marks = new ArrayList<>();
        for (String name : kind.foundBy()) {
            for (String word : foundBy(entries.get(name))) {
                marks.add(mark(name, word));
            }
        }
        return marks;
    }

    /** For each word of a question the marks of which one is enough; the same word is marked otherwise in each entry. */
    List<List<byte[]>> asked(CardKind kind, String question) {
        Set<String> names = new TreeSet<>(kind.foundBy());
        names.addAll(CardKind.CUSTOMER.foundBy());
        return words(question).stream()
                .map(word -> names.stream().map(name -> mark(name, word)).toList())
                .toList();
    }

    private static Set<String> foundBy(String text) {
        List<String> words = words(text);
        Set<String> all = new TreeSet<>(words);
        String together = String.join("", words);
        if (!together.isEmpty()) {
            all.add(together);
            if (together.length() > READ_OUT && together.chars().anyMatch(Character::isDigit)) {
                all.add(together.substring(together.length() - READ_OUT));
            }
        }
        return all;
    }

    private static List<String> words(String text) {
        String plain = ACCENTS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD))
                .replaceAll("")
                .toLowerCase(Locale.ROOT);
        return NO_WORD.splitAsStream(plain).filter(word -> !word.isEmpty()).toList();
    }

    private byte[] mark(String name, String word) {
        return key.mark((name + "\n" + word).getBytes(StandardCharsets.UTF_8));
    }
}
