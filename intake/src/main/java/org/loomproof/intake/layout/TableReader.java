package org.loomproof.intake.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.field.Claims;
import org.loomproof.intake.field.Colours;

/** Rows under one header to records: wrapped cells joined, "same as above" followed, notes put to their rows. */
final class TableReader {

    private final List<ColumnKind> kinds;
    private List<Passage> previous = List.of();

    private TableReader(List<ColumnKind> kinds) {
        this.kinds = kinds;
    }

    /** A reader of rows with the given header; columns without a known name are told by their cells. */
    static TableReader of(List<Optional<ColumnKind>> header, List<List<Passage>> rows) {
        return new TableReader(ColumnVote.kinds(header, rows));
    }

    /** The header's kinds when the row is one: it names columns and holds no colour. */
    static Optional<List<Optional<ColumnKind>>> header(List<Passage> row, boolean first) {
        boolean plainlyNamed = row.stream()
                .anyMatch(c -> !Headers.isPerhapsPolarity(c.folded())
                        && Headers.kind(c.folded()).equals(Optional.of(ColumnKind.POLARITY)));
        List<Optional<ColumnKind>> kinds = new ArrayList<>();
        for (Passage cell : row) {
            Optional<ColumnKind> kind = Headers.kind(cell.folded())
                    .filter(k -> !(plainlyNamed && Headers.isPerhapsPolarity(cell.folded())));
            // A second column of the same name is told by its cells.
            kinds.add(kind.filter(k -> k == ColumnKind.NOTE || !kinds.contains(Optional.of(k))));
        }
        long known = kinds.stream().filter(Optional::isPresent).count()
                + row.stream()
                        .filter(c ->
                                Headers.isOpen(c.folded()) || (plainlyNamed && Headers.isPerhapsPolarity(c.folded())))
                        .count();
        long filled = row.stream().filter(c -> !c.isBlank()).count();
        // Short heads such as "bk", a block of terminals, read as colours too.
        boolean colour = row.stream()
                .anyMatch(
                        c -> ColumnVote.isColour(c) && Headers.kind(c.folded()).isEmpty());
        boolean isHeader = !colour
                && ((known >= 2 && known * 2 >= filled) || (first && known >= 1 && filled >= 2 && known * 3 >= filled));
        return isHeader ? Optional.of(kinds) : Optional.empty();
    }

    boolean hasColours() {
        return kinds.contains(ColumnKind.COLOUR);
    }

    /** True when the row only goes on with the one above: its circuit's cell is empty, and so is its colour's, or that of the row above is not at its end. */
    boolean isWrapped(List<Passage> row) {
        int role = kinds.indexOf(ColumnKind.ROLE);
        int colour = kinds.indexOf(ColumnKind.COLOUR);
        if (previous.isEmpty() || role < 0 || !at(row, role).isBlank()) {
            return false;
        }
        if (colour < 0 || at(row, colour).isBlank()) {
            return true;
        }
        String before = at(previous, colour).folded().strip();
        return before.matches(".*(\\b(with|w|and|mit|con|avec|y|et|und)|[/,+-])")
                || Colours.inColumn(new Claims(at(row, colour))).isEmpty();
    }

    /** The row above with this one's cells behind its own. */
    RawEntry joined(RawEntry above, List<Passage> row) {
        List<Passage> cells = new ArrayList<>();
        for (int i = 0; i < Math.max(row.size(), previous.size()); i++) {
            cells.add(Passage.join(List.of(at(previous, i), at(row, i))));
        }
        previous = cells;
        return new RawEntry(cells(cells, List.of()), above.headings(), above.notes());
    }

    /** The record of a row. */
    RawEntry entry(List<Passage> row, List<Passage> headings) {
        List<Passage> cells = new ArrayList<>();
        List<Integer> taken = new ArrayList<>();
        for (int i = 0; i < row.size(); i++) {
            boolean sameRole = i < kinds.size()
                    && kinds.get(i) == ColumnKind.ROLE
                    && row.get(i).isBlank();
            if (!previous.isEmpty() && (Headers.isDitto(row.get(i).folded()) || sameRole)) {
                cells.add(at(previous, i));
                taken.add(i);
            } else {
                cells.add(row.get(i));
            }
        }
        previous = cells;
        return new RawEntry(cells(cells, taken), headings, List.of());
    }

    private List<Cell> cells(List<Passage> row, List<Integer> taken) {
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i < row.size(); i++) {
            ColumnKind kind = i < kinds.size() ? kinds.get(i) : ColumnKind.FREE;
            if (!row.get(i).isBlank()) {
                cells.add(new Cell(kind, row.get(i), taken.contains(i)));
            }
        }
        return cells;
    }

    private static Passage at(List<Passage> row, int column) {
        return column < row.size() ? row.get(column) : Passage.line("", 1, 1);
    }
}
