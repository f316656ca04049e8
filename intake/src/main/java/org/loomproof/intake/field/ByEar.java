package org.loomproof.intake.field;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.codec.language.ColognePhonetic;
import org.apache.commons.codec.language.DoubleMetaphone;
import org.apache.commons.text.similarity.LevenshteinDistance;

/**
 * The known words that one spelt by ear sounds like: by the double metaphone (L. Philips, C/C++ Users Journal, June 2000; from memory) for
 * English ears or the Cologne phonetics (H. J. Postel, IBM-Nachrichten 19, 1969; from memory) for German ones. Sounds are a weak sign: many words share one, so the
 * spelling may not be far off either, and whoever uses it must never call it sure.
 */
final class ByEar {

    private static final int SHORTEST = 4;
    private static final int LONGEST = 30;

    /** Codes of fewer sounds are shared by too many words. */
    private static final int LEAST_SOUNDS = 3;

    private static final int MOST_LETTERS_OFF = 3;

    private final DoubleMetaphone english = new DoubleMetaphone();
    private final ColognePhonetic german = new ColognePhonetic();
    private final Map<String, Set<String>> bySound = new HashMap<>();

    ByEar(Set<String> known) {
        english.setMaxCodeLen(LONGEST);
        for (String word : known) {
            if (word.length() >= SHORTEST) {
                sounds(word)
                        .forEach(sound -> bySound.computeIfAbsent(sound, s -> new TreeSet<>())
                                .add(word));
            }
        }
    }

    List<String> listAlike(String word) {
        if (word.length() < SHORTEST || word.length() > LONGEST) {
            return List.of();
        }
        int most = Math.min(MOST_LETTERS_OFF, word.length() / 2);
        LevenshteinDistance distance = new LevenshteinDistance(most);
        return sounds(word).stream()
                .flatMap(sound -> bySound.getOrDefault(sound, Set.of()).stream())
                .distinct()
                .filter(known -> known.charAt(0) == word.charAt(0) && distance.apply(word, known) >= 0)
                .toList();
    }

    /** Its codes, each marked with whose ear it is for. */
    private List<String> sounds(String word) {
        boolean letters = word.codePoints().allMatch(c -> c >= 'a' && c <= 'z');
        return letters
                ? Stream.of("e" + english.doubleMetaphone(word), "g" + german.colognePhonetic(word))
                        .filter(code -> code.length() > LEAST_SOUNDS)
                        .toList()
                : List.of();
    }
}
