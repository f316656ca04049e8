package org.loomproof.intake.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.field.Claims;
import org.loomproof.intake.field.Colours;
import org.loomproof.intake.field.Marks;
import org.loomproof.intake.role.Roles;

/** Parts what speaks of several circuits at once: "Lock / unlock: green, blue (both -)" names two, and so do two labels in one line. */
final class Several {

    private static final Pattern NAMES_PARTED = Pattern.compile("\\s*[/&+,]\\s*|\\s+(?:and|y|und|et|or|o|oder|ou)\\s+");

    /** What parts colours: a stroke alone joins the two of one wire. */
    private static final Pattern COLOURS_PARTED =
            Pattern.compile("\\s*[,;]\\s*|\\s+[/&+]\\s+|\\s+(?:and|y|und|et|resp\\.?|bzw\\.?)\\s+");

    private static final Pattern LABEL =
            Pattern.compile("^([^:=]{2,40}?)\\s*(?::\\s|=+>?\\s?|[-=]>|\u2192|\\s[-\u2013]\\s)\\s*");

    /** Where another label may begin: behind a gap or a mark. */
    private static final Pattern NEXT_LABEL =
            Pattern.compile("(?:\\s{2,}|\\s*[;,|]\\s*)(?=[^:=,;|]{2,30}?\\s?(?::\\s?|=+>?\\s?|[-=]>|\u2192)\\s*\\S)");

    private static final Pattern SIDES_PARTED =
            Pattern.compile("\\s*(?:[/,;|(]|\\b(?:and|und|y|et|or|oder|o|ou)\\b)?\\s*$");

    private static final Pattern BEGINS_CLAIMED = Pattern.compile("[\\s:=(]*" + Claims.CLAIMED);

    private static final int MOST = 4;

    private Several() {}

    /** The lines that a line of free text stands for, one a circuit. */
    static List<Passage> lines(Passage line) {
        List<Passage> lines = new ArrayList<>();
        for (Passage part : labelled(line)) {
            for (Passage variant : sided(part)) {
                lines.addAll(named(variant));
            }
        }
        return lines;
    }

    /** True when one line speaks of several circuits by a label each. */
    static boolean isSeveral(Passage line) {
        return line.text().indexOf('=') != line.text().lastIndexOf('=')
                && labelled(line).size() > 1;
    }

    /** Each label with what follows it, when each is followed by a colour. */
    private static List<Passage> labelled(Passage line) {
        List<Passage> parts = new ArrayList<>();
        Matcher next = NEXT_LABEL.matcher(line.text());
        int from = 0;
        while (next.find()) {
            Passage before = line.part(from, next.start());
            if (isLabelled(before) && isLabelled(line.part(next.end(), line.length()))) {
                parts.add(before);
                from = next.end();
            }
        }
        parts.add(line.part(from, line.length()));
        return parts;
    }

    /** "Ignition LHD black/red, RHD black/blue, both at the column" as two lines, one a side of the wheel; what stands behind the second colour holds for both. */
    private static List<Passage> sided(Passage line) {
        List<int[]> sides = Marks.bothSides(line);
        if (sides.isEmpty()) {
            return List.of(line);
        }
        int[] one = sides.getFirst();
        int[] other = sides.getLast();
        Passage first = line.part(one[1], other[0]);
        Passage second = line.part(other[1], line.length());
        Matcher joint = SIDES_PARTED.matcher(first.text());
        if (!joint.find() || !beginsWithColour(first) || !beginsWithColour(second)) {
            return List.of(line);
        }
        Passage name = line.part(0, one[0]);
        Claims claims = new Claims(second);
        Colours.among(claims);
        Passage tail = second.part(claims.open().lastIndexOf(Claims.CLAIMED) + 1, second.length());
        return List.of(
                Passage.append(List.of(name, line.part(one[0], one[1]), first.part(0, joint.start()), tail)),
                Passage.append(List.of(name, line.part(other[0], other[1]), second)));
    }

    /** A label, and right behind it a colour. */
    private static boolean isLabelled(Passage part) {
        Matcher label = LABEL.matcher(part.text());
        return label.find() && label.end() < part.length() && beginsWithColour(part.part(label.end(), part.length()));
    }

    private static boolean beginsWithColour(Passage text) {
        Claims claims = new Claims(text);
        return Colours.among(claims).isPresent()
                && BEGINS_CLAIMED.matcher(claims.open()).lookingAt();
    }

    /** "Lock / unlock: green, blue" as two lines; what stands behind the last colour holds for both. */
    private static List<Passage> named(Passage line) {
        Matcher label = LABEL.matcher(line.text());
        if (!label.find()) {
            return List.of(line);
        }
        List<Passage> names = names(line.part(0, label.end(1)));
        if (names.size() < 2) {
            return List.of(line);
        }
        Passage rest = line.part(label.end(), line.length());
        List<Passage> colours = parted(rest, COLOURS_PARTED, names.size());
        if (colours.size() != names.size() || !colours.stream().allMatch(Several::beginsWithColour)) {
            return List.of(line);
        }
        Claims last = new Claims(colours.getLast());
        Colours.among(last);
        int end = last.open().lastIndexOf(Claims.CLAIMED) + 1;
        Passage tail = colours.getLast().part(end, colours.getLast().length());
        Passage sign = line.part(label.end(1), label.end());
        List<Passage> lines = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            boolean isLast = i + 1 == names.size();
            lines.add(Passage.append(List.of(
                    names.get(i), sign, isLast ? colours.get(i) : Passage.append(List.of(colours.get(i), tail)))));
        }
        return lines;
    }

    /** A row that names several circuits and as many colours, as so many rows. */
    static List<RawEntry> rows(RawEntry row) {
        Optional<Cell> role = cell(row, ColumnKind.ROLE);
        Optional<Cell> colour = cell(row, ColumnKind.COLOUR);
        if (role.isEmpty() || colour.isEmpty()) {
            return List.of(row);
        }
        List<Passage> names = names(role.get().text());
        List<Passage> colours = parted(colour.get().text(), COLOURS_PARTED, names.size());
        if (names.size() < 2
                || colours.size() != names.size()
                || !colours.stream().allMatch(Several::beginsWithColour)) {
            return List.of(row);
        }
        List<RawEntry> rows = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            List<Cell> cells = new ArrayList<>();
            for (Cell cell : row.cells()) {
                List<Passage> each = switch (cell.kind()) {
                    case ROLE -> names;
                    case COLOUR -> colours;
                    default -> parted(cell.text(), COLOURS_PARTED, names.size());
                };
                cells.add(each.size() == names.size() ? new Cell(cell.kind(), each.get(i), cell.takenOver()) : cell);
            }
            rows.add(new RawEntry(cells, row.headings(), row.notes()));
        }
        return rows;
    }

    private static Optional<Cell> cell(RawEntry row, ColumnKind kind) {
        return row.cells().stream().filter(c -> c.kind() == kind).findFirst();
    }

    /** The circuits that a text names; a part that names none by itself takes the words of the first: "parking lamps L / R". */
    private static List<Passage> names(Passage text) {
        List<Passage> parts = parted(text, NAMES_PARTED, MOST);
        if (parts.size() < 2 || !isName(parts.getFirst())) {
            return List.of(text);
        }
        Passage first = parts.getFirst();
        int lastWord = first.text().stripTrailing().lastIndexOf(' ');
        List<Passage> names = new ArrayList<>();
        for (Passage part : parts) {
            boolean isSide = part.text().strip().matches("\\p{L}{1,4}\\.?");
            if (isName(part) || lastWord < 0 || !isSide) {
                names.add(part);
            } else {
                names.add(Passage.append(List.of(first.part(0, lastWord + 1), part)));
            }
        }
        return names;
    }

    private static boolean isName(Passage text) {
        return Roles.inColumn(new Claims(text)).isPresent();
    }

    private static List<Passage> parted(Passage text, Pattern between, int most) {
        List<Passage> parts = new ArrayList<>();
        Matcher matcher = between.matcher(text.text());
        int from = 0;
        while (parts.size() + 1 < most && matcher.find()) {
            if (matcher.start() > from) {
                parts.add(text.part(from, matcher.start()));
                from = matcher.end();
            }
        }
        parts.add(text.part(from, text.length()));
        return parts;
    }
}
