package org.loomproof.intake.correct;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.check.Field;
import org.loomproof.intake.check.ReadNotes;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.decode.SourceLines;

/**
 * The model of a page of corrections: on the left the lines of the source, on the right what was understood of them.
 *
 * @param source the lines as they stand there, from the entry's first to its last
 * @param entry what was understood
 * @param suggestions what the shop once said about such a text, where it would change something
 */
public record ReviewLine(List<Passage> source, Entry entry, List<Suggestion> suggestions) {

    private static final int MOST_LINES = 20;

    public ReviewLine {
        source = List.copyOf(source);
        suggestions = List.copyOf(suggestions);
    }

    /** One review line an entry, in the order of the notes. */
    public static List<ReviewLine> of(SourceLines source, ReadNotes notes, ShopMemory memory) {
        return notes.entries().stream()
                .map(entry -> new ReviewLine(lines(source, entry), entry, suggestions(entry, memory)))
                .toList();
    }

    /** This line after a tap: the correction applied, or the line as it was when the correction cannot be read. */
    public ReviewLine corrected(Correction correction) {
        Optional<Entry> right = correction.applied(entry);
        return right.map(e -> new ReviewLine(
                        source,
                        e,
                        suggestions.stream()
                                .filter(s -> s.correction().field() != correction.field())
                                .toList()))
                .orElse(this);
    }

    private static List<Passage> lines(SourceLines source, Entry entry) {
        return source.lines().stream()
                .filter(line -> !line.isBlank()
                        && line.origin().lastLine() >= entry.origin().line()
                        && line.origin().line() <= entry.origin().lastLine())
                .limit(MOST_LINES)
                .toList();
    }

    private static List<Suggestion> suggestions(Entry entry, ShopMemory memory) {
        List<Suggestion> suggestions = new ArrayList<>();
        for (Field field : Field.values()) {
            memory.suggestion(entry, field)
                    .filter(s -> s.correction()
                            .applied(entry)
                            .map(e -> !Values.of(e, field).equals(Values.of(entry, field)))
                            .orElse(false))
                    .ifPresent(suggestions::add);
        }
        return suggestions;
    }
}
