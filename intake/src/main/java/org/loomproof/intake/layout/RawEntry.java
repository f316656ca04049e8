package org.loomproof.intake.layout;

import java.util.List;
import org.loomproof.intake.decode.Passage;

/**
 * What a sheet says of one circuit, before it is understood.
 *
 * @param cells in the order of the text
 * @param headings the headings it stands under that are still in force: places, groups of circuits, variants
 * @param notes lines and footnotes that belong to it
 */
public record RawEntry(List<Cell> cells, List<Passage> headings, List<Passage> notes) {

    public RawEntry {
        cells = List.copyOf(cells);
        headings = List.copyOf(headings);
        notes = List.copyOf(notes);
    }

    boolean has(ColumnKind kind) {
        return cells.stream().anyMatch(c -> c.kind() == kind && !c.text().isBlank());
    }
}
