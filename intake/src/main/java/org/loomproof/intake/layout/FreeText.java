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
import org.loomproof.intake.field.Places;
import org.loomproof.intake.field.Polarity;
import org.loomproof.intake.role.Roles;

/** Text without columns: forms of "colour: red" lines, a circuit a line, a circuit a paragraph, or prose. */
final class FreeText {

    private static final Pattern BULLET =
            Pattern.compile("^\\s*(?:[*\u2022\u00b7>o-]\\s+|\\(?\\d{1,3}[.)]\\s+|[a-z]\\)\\s+)");
    private static final Pattern SENTENCE_INSIDE =
            Pattern.compile("[a-z0-9)\u00df-\u024f][.!?]\\s+[\\p{Lu}]\\p{L}*\\s");
    private static final Pattern MODEL_YEAR = Pattern.compile("\\b(?:19[5-9]\\d|20[0-4]\\d)\\b");
    private static final int LONGEST_TITLE_WORDS = 6;
    private static final Pattern LABEL =
            Pattern.compile("^\\s*[^:=,;]{2,40}?\\s*(?::\\s|=+>?\\s|[-=]>|\u2192|\\.{3,}|\\s[-\u2013]\\s)");
    private static final Pattern WIRE = Pattern.compile(
            "\\b(?:wires?|cables?|leads?|lines?|kabel|leitung(?:en)?|draht|drahte|ader|adern|hilos?|fils?)\\b");
    private static final double LISTED_SHARE = 0.6;
    private static final Pattern LEGEND = Pattern.compile("\\s*\\(.*\\)\\s*");
    private static final int LEAST_OF_A_LEGEND = 3;
    private static final int LEAST_LED = 3;
    private static final int LEAST_INDENTED = 2;

    private final Draft draft;

    FreeText(Draft draft) {
        this.draft = draft;
    }

    /** A block of lines without an empty one between. */
    void read(List<Passage> block) {
        List<Passage> whole =
                block.stream().flatMap(line -> Several.lines(line).stream()).toList();
        List<Passage> before = draft.headings();
        boolean led = isLed(whole);
        if (led) {
            draft.heading(whole.getFirst().slice(0, whole.getFirst().length()));
        }
        int first = draft.count();
        List<Passage> lines = new ArrayList<>(led ? whole.subList(1, whole.size()) : whole);
        // Where several lines speak of all, nobody knows of which.
        List<Passage> ofAll =
                lines.stream().filter(line -> placeOfAll(line).isPresent()).toList();
        boolean isOne = lines.size() >= LEAST_LED && ofAll.size() == 1;
        if (isOne) {
            lines.remove(ofAll.getFirst());
        }
        body(lines);
        if (isOne) {
            draft.loose(ofAll.getFirst());
            draft.saidOfAll(
                    first,
                    new Cell(
                            ColumnKind.PLACE_OF_ALL,
                            placeOfAll(ofAll.getFirst()).orElseThrow(),
                            true));
        }
        if (led) {
            draft.headings(before);
        }
    }

    /** True when the first line has no colour and says something of the list below it: how all switch, where they are, or what they are for. */
    private static boolean isLed(List<Passage> lines) {
        if (lines.size() < LEAST_LED) {
            return false;
        }
        Passage first = lines.getFirst();
        List<Passage> rest = lines.subList(1, lines.size());
        boolean isName = LABEL.matcher(first.text()).find() && Roles.names(first.folded());
        return !hasColour(first)
                && !isName
                && Heading.of(first).isEmpty()
                && field(first).isEmpty()
                && isList(rest)
                && (Polarity.isSaid(first)
                        || Places.afterPreposition(new Claims(first)).isPresent()
                        || (Roles.names(first.folded())
                                && rest.stream()
                                                        .filter(l -> Roles.names(l.folded()))
                                                        .count()
                                                * 2
                                        < rest.size()));
    }

    /** Where all of a list are, when the line says nothing else: a place behind its label, or one with a word for all of them. */
    static Optional<Passage> placeOfAll(Passage line) {
        if (hasColour(line)) {
            return Optional.empty();
        }
        Optional<Passage> labelled = field(line)
                .filter(cell -> cell.kind() == ColumnKind.PLACE && !cell.text().isBlank())
                .map(Cell::text);
        return labelled.or(() -> Clauses.placeOfAll(line));
    }

    private void body(List<Passage> lines) {
        if (draft.isEmpty() && lines.size() == 1 && (isTitle(lines.getFirst()) || isOfTheCar(lines.getFirst()))) {
            draft.loose(lines.getFirst());
        } else if (isForm(lines)) {
            form(lines);
        } else if (isIndented(lines)) {
            indented(lines);
        } else if (isParagraph(lines)) {
            draft.add(paragraph(lines));
        } else if (isList(lines)) {
            lines.forEach(this::item);
        } else if (isProse(lines)) {
            proseAndItems(lines);
        } else {
            lines.forEach(this::line);
        }
    }

    /** True for a line above everything, with neither colour nor pole nor place nor label, that holds words nobody knows: it is what the notes are called. */
    private static boolean isTitle(Passage line) {
        return !hasColour(line)
                && Heading.of(line).isEmpty()
                && !Roles.isKnown(line.folded())
                && !LABEL.matcher(line.text()).find()
                && line.text().indexOf(',') < 0
                && !SENTENCE_INSIDE.matcher(line.text()).find()
                && Places.afterPreposition(new Claims(line)).isEmpty();
    }

    /** True for a line above everything that says which car it is: by its year, with neither colour nor pole. */
    private static boolean isOfTheCar(Passage line) {
        return MODEL_YEAR.matcher(line.text()).find() && !hasColour(line) && !Polarity.isSaid(line);
    }

    /** A line that stands between the rows of a table. */
    void between(Passage line) {
        boolean ownEntry = hasColour(line) && Roles.names(line.folded());
        if (ownEntry || isOfACircuit(line)) {
            Several.lines(line).forEach(this::line);
        } else {
            draft.note(line.slice(0, line.length()));
        }
    }

    /** A label that is a circuit's name and nothing else, or a line that says that there is no such circuit. */
    private static boolean isOfACircuit(Passage line) {
        Matcher label = LABEL.matcher(line.text());
        if (label.find() && isCircuit(line.slice(label.start(), label.end()))) {
            return true;
        }
        Claims claims = new Claims(line);
        return Marks.absent(claims)
                && Roles.inColumn(claims).isPresent()
                && claims.leftOver().isEmpty();
    }

    private static boolean isCircuit(Passage name) {
        Claims claims = new Claims(name);
        return Roles.inColumn(claims).isPresent()
                && claims.leftOver().stream().allMatch(p -> Roles.isNoise(p.folded()));
    }

    /** A circuit a line, each behind its label. */
    private static boolean isList(List<Passage> lines) {
        long labelled = lines.stream()
                .filter(l -> LABEL.matcher(withoutBullet(l).text()).find() && hasColour(l))
                .count();
        return lines.size() > 1 && labelled >= LISTED_SHARE * lines.size();
    }

    /** A line of a list, which may speak of several circuits, or only say what the short forms of the others mean. */
    private void item(Passage line) {
        if (LEGEND.matcher(line.text()).matches() && Colours.count(line) >= LEAST_OF_A_LEGEND) {
            draft.loose(line);
        } else if (Heading.of(line).isEmpty() && Clauses.of(line).size() > 1) {
            prose(List.of(line));
        } else {
            line(line);
        }
    }

    private void line(Passage line) {
        Optional<Passage> heading = Heading.of(line);
        if (heading.isPresent()) {
            draft.heading(heading.get());
            return;
        }
        if (draft.footnote(line)) {
            return;
        }
        Passage bare = withoutBullet(line);
        if (hasColour(bare) || Roles.names(bare.folded())) {
            draft.add(new RawEntry(List.of(new Cell(ColumnKind.FREE, bare)), draft.headings(), List.of()));
        } else if (draft.isEmpty()) {
            draft.loose(bare);
        } else {
            draft.note(bare);
        }
    }

    private static Passage withoutBullet(Passage line) {
        var bullet = BULLET.matcher(line.text());
        Passage rest = bullet.find() ? line.slice(bullet.end(), line.length()) : line;
        // A line that is nothing but a bullet stays what it is.
        return rest.isBlank() ? line : rest.slice(0, rest.length());
    }

    private static boolean hasColour(Passage text) {
        return Colours.among(new Claims(text)).isPresent();
    }

    // Forms.

    private static Optional<Cell> field(Passage line) {
        Passage bare = withoutBullet(line);
        int sign = bare.text().indexOf(':');
        sign = sign < 0 ? bare.text().indexOf('=') : sign;
        if (sign <= 0) {
            return Optional.empty();
        }
        Passage value = bare.slice(sign + 1, bare.length());
        return Headers.kind(bare.folded().substring(0, sign)).map(kind -> new Cell(kind, value));
    }

    private static boolean isForm(List<Passage> lines) {
        return lines.stream().filter(l -> field(l).isPresent()).count() * 2 >= lines.size() && lines.size() > 1;
    }

    private void form(List<Passage> lines) {
        List<Cell> cells = new ArrayList<>();
        for (Passage line : lines) {
            Optional<Cell> field = field(line);
            if (field.isEmpty()) {
                // The first line of a form may be its circuit's bare name.
                cells.add(new Cell(cells.isEmpty() ? ColumnKind.ROLE : ColumnKind.NOTE, withoutBullet(line)));
                continue;
            }
            ColumnKind kind = field.get().kind();
            if (kind == ColumnKind.ROLE && cells.stream().anyMatch(c -> c.kind() == kind)) {
                draft.add(new RawEntry(cells, draft.headings(), List.of()));
                cells = new ArrayList<>();
            }
            if (field.get().text().isBlank()) {
                draft.loose(line);
            } else {
                cells.add(field.get());
            }
        }
        if (!cells.isEmpty()) {
            draft.add(new RawEntry(cells, draft.headings(), List.of()));
        }
    }

    // Paragraphs.

    private static boolean isParagraph(List<Passage> lines) {
        if (lines.size() < 2) {
            return false;
        }
        Passage title = lines.getFirst();
        boolean isTitle = title.text().strip().split("\\s+", -1).length <= LONGEST_TITLE_WORDS
                && !title.text().strip().endsWith(".")
                && !hasColour(title)
                && !Places.isPlace(title.folded())
                && Roles.names(title.folded());
        long others = lines.stream()
                .skip(1)
                .filter(l -> hasColour(l) && Roles.names(l.folded()))
                .count();
        long coloured = lines.stream().skip(1).filter(FreeText::hasColour).count();
        boolean isList = coloured > 1 && isList(lines.subList(1, lines.size()));
        return isTitle && coloured > 0 && others * 2 < coloured + 1 && !isList;
    }

    /** Names at the margin, and below each its fields, set in. */
    private static boolean isIndented(List<Passage> lines) {
        List<List<Passage>> groups = groups(lines);
        return groups.size() >= LEAST_INDENTED
                && groups.stream()
                        .allMatch(g -> g.size() > 1
                                && !hasColour(g.getFirst())
                                && g.stream().filter(FreeText::hasColour).count() == 1);
    }

    private static List<List<Passage>> groups(List<Passage> lines) {
        List<List<Passage>> groups = new ArrayList<>();
        for (Passage line : lines) {
            if (!Character.isWhitespace(line.text().charAt(0)) || groups.isEmpty()) {
                groups.add(new ArrayList<>());
            }
            groups.getLast().add(line);
        }
        return groups;
    }

    private void indented(List<Passage> lines) {
        for (List<Passage> group : groups(lines)) {
            List<Cell> cells = new ArrayList<>();
            for (Passage line : group) {
                cells.add(new Cell(cells.isEmpty() ? ColumnKind.ROLE : indentedKind(line), withoutBullet(line)));
            }
            draft.add(new RawEntry(cells, draft.headings(), List.of()));
        }
    }

    private static ColumnKind indentedKind(Passage line) {
        if (line.folded().strip().matches("[+-]")) {
            return ColumnKind.POLARITY;
        }
        if (hasColour(line)) {
            return ColumnKind.COLOUR;
        }
        return Places.isPlace(line.folded()) ? ColumnKind.PLACE : ColumnKind.FREE;
    }

    private RawEntry paragraph(List<Passage> lines) {
        return new RawEntry(
                List.of(
                        new Cell(ColumnKind.ROLE, withoutBullet(lines.getFirst())),
                        new Cell(ColumnKind.FREE, Passage.join(lines.subList(1, lines.size())))),
                draft.headings(),
                List.of());
    }

    // Prose.

    private static boolean isProse(List<Passage> lines) {
        return lines.stream()
                        .anyMatch(l ->
                                SENTENCE_INSIDE.matcher(withoutBullet(l).text()).find())
                || lines.stream()
                        .anyMatch(l -> Colours.count(l) > 1 && Clauses.of(l).size() > 1);
    }

    /** Prose between lines with labels of their own: what stands in one of those is never another's. */
    private void proseAndItems(List<Passage> lines) {
        if (lines.stream().filter(FreeText::isNamedItem).count() < LEAST_NAMED) {
            prose(lines);
            return;
        }
        List<Passage> run = new ArrayList<>();
        for (Passage line : lines) {
            if (LABEL.matcher(withoutBullet(line).text()).find()) {
                if (!run.isEmpty()) {
                    prose(run);
                    run = new ArrayList<>();
                }
                item(line);
            } else {
                run.add(line);
            }
        }
        if (!run.isEmpty()) {
            prose(run);
        }
    }

    private static final int LEAST_NAMED = 2;

    /** A line whose label names a circuit, with a colour behind it. */
    private static boolean isNamedItem(Passage line) {
        Passage bare = withoutBullet(line);
        Matcher label = LABEL.matcher(bare.text());
        return label.find()
                && Roles.names(bare.folded().substring(0, label.end()))
                && hasColour(bare.slice(label.end(), bare.length()));
    }

    private void prose(List<Passage> lines) {
        Passage text = Passage.join(lines.stream().map(FreeText::withoutBullet).toList());
        List<Passage> sentences = Clauses.sentences(text);
        for (Passage sentence : sentences) {
            int before = draft.count();
            boolean leads = sentences.size() > 1 && sentence.equals(sentences.getFirst());
            for (Passage clause : Clauses.of(sentence)) {
                clause(clause, leads);
                Clauses.ofAll(clause).ifPresent(said -> draft.ofAllSince(before, said));
            }
            if (draft.count() > before + 1) {
                Clauses.leadingPlace(sentence)
                        .ifPresent(
                                place -> draft.saidOfAll(before + 1, new Cell(ColumnKind.PLACE_OF_ALL, place, true)));
            }
        }
    }

    /** True when a colour is a wire's, by its second hue, a word for it, a pole or a place: "I had the grey one on the lift" tells of none. */
    private static boolean isOfAWire(Passage clause) {
        return Colours.count(clause) > 1
                || Colours.among(new Claims(clause))
                        .filter(colour -> colour.value().letters().indexOf('/') > 0)
                        .isPresent()
                || WIRE.matcher(clause.folded()).find()
                || Polarity.isSaid(clause)
                || Places.afterPreposition(new Claims(clause)).isPresent();
    }

    /** True when a clause holds a colour and no other word: "Dark green with white." begins what is said of that wire. */
    private static boolean isBareColour(Passage clause) {
        Claims claims = new Claims(clause);
        return Colours.among(claims).isPresent() && claims.leftOver().isEmpty();
    }

    /** A clause with a circuit or colour of its own is a record, and so is a bare colour that leads a paragraph; any other says more of the one before. */
    private void clause(Passage clause, boolean leads) {
        boolean colour = hasColour(clause);
        boolean role = Clauses.names(clause);
        boolean open = !draft.isEmpty() && !draft.last().cells().isEmpty();
        boolean another = open
                && isBareColour(clause)
                && (leads || draft.last().cells().stream().anyMatch(cell -> hasColour(cell.text())));
        boolean first = !open && (role || (colour && (isOfAWire(clause) || isBareColour(clause))));
        if ((colour && role) || another || first) {
            draft.add(new RawEntry(List.of(new Cell(ColumnKind.FREE, clause)), draft.headings(), List.of()));
        } else if (!open) {
            draft.loose(clause);
        } else if (role
                && !colour
                && hasColour(draft.last().cells().getLast().text())
                && !isBareColour(draft.last().cells().getFirst().text())) {
            draft.add(new RawEntry(List.of(new Cell(ColumnKind.FREE, clause)), draft.headings(), List.of()));
        } else {
            List<Cell> cells = new ArrayList<>(draft.last().cells());
            cells.add(new Cell(ColumnKind.FREE, clause));
            draft.replaceLast(
                    new RawEntry(cells, draft.last().headings(), draft.last().notes()));
        }
    }
}
