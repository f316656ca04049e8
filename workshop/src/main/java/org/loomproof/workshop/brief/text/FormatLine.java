package org.loomproof.workshop.brief.text;

import java.util.Optional;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Phrase;

/** The line {@code format: loomproof sheet 1} that each of our files starts with, and the entries below it. */
public final class FormatLine {

    private FormatLine() {}

    /**
     * The entries of a text of that format; empty, with problems noted, when it is not such a text.
     *
     * @param format such as {@code loomproof sheet 1}
     */
    public static Optional<MappingCursor> open(SourceText source, String format, Problems problems) {
        Optional<MappingCursor> entries = root(source, problems);
        if (entries.isEmpty()) {
            return Optional.empty();
        }
        Optional<Cursor> line = entries.get().find("format");
        if (line.isEmpty()) {
            entries.get().missing("format", Phrase.of("problem.wanted.format", format));
            return Optional.empty();
        }
        if (!line.get().found().strip().equals(format)) {
            line.get()
                    .problem(
                            ProblemKind.WRONG_FORMAT,
                            Phrase.of("problem.wanted.format", format),
                            Phrase.of("problem.hint.format"));
            return Optional.empty();
        }
        return entries;
    }

    /** The entries of a text without a format line; empty, with problems noted, when it has none. */
    public static Optional<MappingCursor> root(SourceText source, Problems problems) {
        Optional<Entry> tree = YamlTree.read(source, problems);
        if (tree.isEmpty()) {
            return Optional.empty();
        }
        Cursor root = new Cursor(problems, "", tree.get());
        MappingCursor entries = root.mapping();
        return root.isMapping() ? Optional.of(entries) : Optional.empty();
    }
}
