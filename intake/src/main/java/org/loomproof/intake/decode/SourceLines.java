package org.loomproof.intake.decode;

import java.util.List;

/**
 * A source as lines of text.
 *
 * @param name as the reader gave it
 * @param encoding how its bytes were read, for the report
 * @param lines in order; empty ones are kept, since they part one thing from another
 */
public record SourceLines(String name, String encoding, List<Passage> lines) {

    public SourceLines {
        lines = List.copyOf(lines);
    }
}
