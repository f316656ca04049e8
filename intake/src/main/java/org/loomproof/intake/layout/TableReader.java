package org.loomproof.intake.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.field.Claims;
import org.loomproof.intake.field.Colours;
import org.loomproof.intake.field.Found;
import org.loomproof.intake.field.Marks;

/** Rows under one header to records: wrapped cells joined, "same as above" followed, notes put to their rows. */
final class TableReader {

    private static final Pattern GOES_ON = Pattern.compile(".*(\\b(with|w|and|mit|con|avec|y|et|und)|[/,+-])");

    private final List<ColumnKind> kinds;

    /** How many columns have a name over them; the others are known by their cells only. */
    private final int named;

    /** What stands over each column; a column for one side of the wheel has its heading there. */
    private final List<Passage> over;

    private List<Passage> previous = List.of();

    private TableReader(List<ColumnKind> kinds, int named, List<Passage> over) {
        this.kinds = kinds;
        this.named = named;
        this.over = over;
    }

    /** A reader of rows with the given header; columns without a known name are told by their cells. */
    static TableReader of(List<Optional<ColumnKind>> header, List<Passage> over, List<List<Passage>> rows) {
        return new TableReader(ColumnVote.kinds(header, rows), header.size(), over);
    }

    /** The records of a row: one, or where columns hold for one side of the wheel only, one a side. */
    List<RawEntry> entries(List<Passage> row, List<Passage> headings) {
        List<Integer> sided = sided();
        RawEntry whole = entry(row, headings);
        if (sided.size() < 2) {
            return List.of(whole);
        }
        List<RawEntry> variants = new ArrayList<>();
        for (int column : sided) {
            if (column < row.size() && !row.get(column).isBlank()) {
                List<Passage> inForce = new ArrayList<>(headings);
                inForce.add(over.get(column));
                List<Passage> cells = new ArrayList<>(previous);
                sided.stream()
                        .filter(other -> other < cells.size() && isOtherSide(other, column))
                        .forEach(other -> cells.set(other, Passage.line("", 1, 1)));
                RawEntry variant = new RawEntry(cells(cells, List.of()), inForce, List.of());
                boolean isThere = variants.stream().anyMatch(v -> v.cells().equals(variant.cells()));
                if (!isThere) {
                    variants.add(variant);
                }
            }
        }
        return variants.isEmpty() ? List.of(whole) : variants;
    }

    private boolean isOtherSide(int one, int other) {
        return !side(over.get(one)).equals(side(over.get(other)));
    }

    private List<Integer> sided() {
        return IntStream.range(0, over.size())
                .filter(i -> !side(over.get(i)).isEmpty())
                .boxed()
                .toList();
    }

    private static String side(Passage cell) {
        return Marks.steering(new Claims(cell));
    }

    /** The kind that the words over a column name, the side of the wheel aside. */
    private static Optional<ColumnKind> kind(Passage cell) {
        Claims claims = new Claims(cell);
        return Marks.steering(claims).isEmpty()
                ? Headers.kind(cell.folded())
                : Headers.kind(claims.open()
                        .replaceAll("[" + Claims.CLAIMED + "():/-]+", " ")
                        .strip());
    }

    /** The header's kinds when the row is one: it names columns and holds no colour. */
    static Optional<List<Optional<ColumnKind>>> header(List<Passage> row, boolean first) {
        boolean plainlyNamed = row.stream()
                .anyMatch(c -> Headers.kind(c.folded()).equals(Optional.of(ColumnKind.POLARITY))
                        && !Headers.isPerhapsPolarity(c.folded()));
        List<Optional<ColumnKind>> kinds = new ArrayList<>();
        for (Passage cell : row) {
            Optional<ColumnKind> kind =
                    kind(cell).filter(k -> !(plainlyNamed && Headers.isPerhapsPolarity(cell.folded())));
            // A second column of the same name is told by its cells.
            boolean sided = !side(cell).isEmpty();
            kinds.add(kind.filter(k -> k == ColumnKind.NOTE || sided || !kinds.contains(Optional.of(k))));
        }
        long known = kinds.stream().filter(Optional::isPresent).count()
                + row.stream()
                        .filter(c -> (!side(c).isEmpty() && kind(c).isEmpty())
                                || Headers.isOpen(c.folded())
                                || (plainlyNamed && Headers.isPerhapsPolarity(c.folded())))
                        .count();
        long filled = row.stream().filter(c -> !c.isBlank()).count();
        // Short heads such as "bk", a block of terminals, read as colours too.
        boolean isHeader =
                ((known >= 2 && known * 2 >= filled) || (first && known >= 1 && filled >= 2 && known * 3 >= filled))
                        && row.stream()
                                .noneMatch(c -> ColumnVote.isColour(c)
                                        && Headers.kind(c.folded()).isEmpty());
        return isHeader ? Optional.of(kinds) : Optional.empty();
    }

    boolean hasColours() {
        return kinds.contains(ColumnKind.COLOUR);
    }

    /** The row's cells under their columns: a line set in below a circuit that begins with a colour leaves the circuit to the one above. */
    List<Passage> aligned(List<Passage> row) {
        boolean isSetIn = named == 0
                && !previous.isEmpty()
                && !kinds.isEmpty()
                && kinds.getFirst() == ColumnKind.ROLE
                && row.size() > 1
                && !row.getFirst().isBlank()
                && !at(previous, 0).isBlank()
                && row.getFirst().origin().column() > at(previous, 0).origin().column()
                && ColumnVote.isColour(row.getFirst())
                && !ColumnVote.isColour(row.get(1));
        if (!isSetIn) {
            return row;
        }
        List<Passage> cells = new ArrayList<>(List.of(Passage.line("", 1, 1)));
        cells.addAll(row);
        return cells;
    }

    /**
     * True when the row only goes on with the one above: its circuit's cell is empty, and so is its colour's, or that of the row above is not at its
     * end. A stroke behind the colour above, with no pole here, says so of any row.
     */
    boolean isWrapped(List<Passage> row) {
        int role = kinds.indexOf(ColumnKind.ROLE);
        int colour = kinds.indexOf(ColumnKind.COLOUR);
        int pole = kinds.indexOf(ColumnKind.POLARITY);
        if (previous.isEmpty() || role < 0) {
            return false;
        }
        boolean isOpen = colour >= 0
                && at(previous, colour).text().stripTrailing().endsWith("/")
                && !at(row, colour).isBlank()
                && Colours.count(at(row, colour)) <= 1;
        if (isOpen
                && pole >= 0
                && at(row, pole).isBlank()
                && !at(previous, pole).isBlank()) {
            return true;
        }
        if (!at(row, role).isBlank()) {
            return false;
        }
        if (colour < 0 || at(row, colour).isBlank()) {
            return true;
        }
        String before = at(previous, colour).folded().strip();
        return GOES_ON.matcher(before).matches()
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
            } else if (i < kinds.size() && kinds.get(i) == ColumnKind.COLOUR && isSameWire(row.get(i))) {
                cells.add(sameWire(row.get(i), at(previous, i)));
                taken.add(i);
            } else {
                cells.add(row.get(i));
            }
        }
        previous = cells;
        return new RawEntry(cells(cells, taken), headings, List.of());
    }

    /** "Same wire, straight to ground": one wire does both, and what stands behind is this row's. */
    private static final Pattern SAME_WIRE = Pattern.compile(
            "^\\s*(?:on |the )?(?:same (?:wire|one|colou?r)|gleiches kabel|gleiche (?:ader|leitung|farbe)|mismo (?:cable|hilo|color)|meme (?:fil|couleur))\\b");

    private boolean isSameWire(Passage cell) {
        return !previous.isEmpty() && SAME_WIRE.matcher(cell.folded()).find();
    }

    private static Passage sameWire(Passage cell, Passage above) {
        Matcher same = SAME_WIRE.matcher(cell.folded());
        if (!same.find()) {
            return cell;
        }
        Claims claims = new Claims(above);
        String colour = Colours.among(claims).map(Found::written).orElse("");
        return colour.isEmpty()
                ? cell
                : Passage.append(List.of(
                        cell.part(0, same.end()).standingFor(colour + " "), cell.part(same.end(), cell.length())));
    }

    private List<Cell> cells(List<Passage> row, List<Integer> taken) {
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i < row.size(); i++) {
            ColumnKind kind = i < kinds.size() ? kinds.get(i) : ColumnKind.FREE;
            if (!row.get(i).isBlank()) {
                ColumnKind holds = i < named ? kind : ColumnVote.kind(kind, i, row);
                cells.add(new Cell(holds, row.get(i), taken.contains(i)));
            }
        }
        return cells;
    }

    private static Passage at(List<Passage> row, int column) {
        return column < row.size() ? row.get(column) : Passage.line("", 1, 1);
    }
}
