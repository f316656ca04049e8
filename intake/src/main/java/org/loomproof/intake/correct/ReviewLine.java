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
    private static final int MOST_AROUND = 60;

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

    /**
     * A line of the source with the entry's own part apart from what stands around it there.
     *
     * @param before shortened to its end; empty when the entry begins the line
     * @param own as written
     * @param behind shortened to its beginning
     */
    public record Told(String before, String own, String behind) {}

    /** The source's lines, so that of a line that tells of many circuits the part can be shown that tells of this one. */
    public List<Told> listTold() {
        return source.stream().map(this::told).toList();
    }

    private Told told(Passage line) {
        int column = line.origin().column();
        boolean first = line.origin().line() == entry.origin().line();
        boolean last = line.origin().lastLine() == entry.origin().lastLine();
        int from = first ? Math.clamp(entry.origin().column() - column, 0, line.length()) : 0;
        int to = last ? Math.clamp(entry.origin().lastColumn() - column + 1, from, line.length()) : line.length();
        String before = line.text().substring(0, from);
        String behind = line.text().substring(to);
        boolean whole = (before + behind).codePoints().noneMatch(Character::isLetterOrDigit);
        return whole
                ? new Told("", line.text(), "")
                : new Told(end(before), line.text().substring(from, to), beginning(behind));
    }

    private static String end(String text) {
        int cut = text.indexOf(' ', Math.max(0, text.length() - MOST_AROUND));
        return text.length() <= MOST_AROUND || cut < 0 ? text : "\u2026" + text.substring(cut);
    }

    private static String beginning(String text) {
        int cut = text.lastIndexOf(' ', MOST_AROUND);
        return text.length() <= MOST_AROUND || cut <= 0 ? text : text.substring(0, cut) + " \u2026";
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
