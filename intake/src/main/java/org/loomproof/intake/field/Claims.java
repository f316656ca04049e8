package org.loomproof.intake.field;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.loomproof.intake.decode.Origin;
import org.loomproof.intake.decode.Passage;

/** A text while it is being read: each reader claims what it understood, so that the next one sees only the rest. */
public final class Claims {

    /** Stands in {@link #open} for each letter of what was claimed. */
    public static final char CLAIMED = '\u0001';

    private final Passage passage;
    private final BitSet taken = new BitSet();
    private String open;
    private @Nullable List<Word> words;
    private final Map<Lexicon, List<Hit>> hits = new HashMap<>(2);

    public Claims(Passage passage) {
        this.passage = passage;
        this.open = passage.folded();
    }

    /** The same with what is claimed so far; what is claimed in one later is not in the other. */
    public Claims copy() {
        Claims copy = new Claims(passage);
        copy.taken.or(taken);
        copy.opened(open);
        return copy;
    }

    public Passage passage() {
        return passage;
    }

    /** The folded text, with what is claimed blotted out; offsets are those of the passage. */
    public String open() {
        return open;
    }

    /** The words that nobody has claimed. */
    public List<Word> words() {
        if (words == null) {
            words = List.copyOf(Word.of(open));
        }
        return words;
    }

    /** What the lexicon finds in the words that nobody has claimed. */
    public List<Hit> hits(Lexicon lexicon) {
        return hits.computeIfAbsent(lexicon, l -> l.find(words()));
    }

    /** True when a digit is among what nobody has claimed. */
    boolean hasNumber() {
        return words().stream().anyMatch(Word::isNumber);
    }

    private void opened(String now) {
        open = now;
        words = null;
        hits.clear();
    }

    /** Keeps stretches from the next readers, until they are given free again. */
    public void shield(List<int[]> stretches) {
        stretches.forEach(s -> blot(s[0], s[1]));
    }

    /** Gives free what was shielded and nobody claimed before or since. */
    public void unshield() {
        StringBuilder blotted = new StringBuilder(passage.folded());
        taken.stream().forEach(i -> blotted.setCharAt(i, CLAIMED));
        opened(blotted.toString());
    }

    /** Blots out what a reader understood. */
    public void claim(int from, int to) {
        taken.set(from, to);
        blot(from, to);
    }

    private void blot(int from, int to) {
        StringBuilder blotted = new StringBuilder(open);
        for (int i = from; i < to; i++) {
            blotted.setCharAt(i, CLAIMED);
        }
        opened(blotted.toString());
    }

    /** The first open match, claimed; its text as written is that of the passage. */
    Optional<Matcher> claim(Pattern pattern) {
        Matcher matcher = pattern.matcher(open);
        if (!matcher.find()) {
            return Optional.empty();
        }
        claim(matcher.start(), matcher.end());
        return Optional.of(matcher);
    }

    /** As written, between two offsets. */
    String written(int from, int to) {
        return passage.text().substring(from, to).strip();
    }

    Origin origin(int from, int to) {
        return passage.origin(from, to);
    }

    /** The stretches nobody has claimed and that hold a letter or digit, as passages of their own. */
    public List<Passage> leftOver() {
        List<Passage> left = new ArrayList<>();
        int at = taken.nextClearBit(0);
        while (at < passage.length()) {
            int end = taken.nextSetBit(at);
            int to = end < 0 ? passage.length() : end;
            if (passage.text().substring(at, to).codePoints().anyMatch(Character::isLetterOrDigit)) {
                left.add(passage.slice(at, to));
            }
            at = taken.nextClearBit(to);
        }
        return left;
    }
}
