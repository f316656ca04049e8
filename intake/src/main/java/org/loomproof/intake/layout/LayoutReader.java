package org.loomproof.intake.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.decode.SourceLines;
import org.loomproof.intake.field.Colours;
import org.loomproof.intake.field.Polarity;
import org.loomproof.intake.role.Roles;

/** Finds how a text is laid out and parts it into records. */
public final class LayoutReader {

    private static final int MOST_LINES_A_BLOCK = 5_000;
    private static final double MOST_SINGLE = 0.4;

    private static final Pattern LEADER = Pattern.compile("(?<=\\S\\s{0,9})(?:\\.{4,}|\\*{3,}|~{4,})(?=\\s*\\S)");

    private static final Pattern RULE = Pattern.compile("[\\s|+:=_*~.-]{3,}");

    private final Draft draft = new Draft();

    private LayoutReader() {}

    /** The records of the source. */
    public static LaidOut read(SourceLines source) {
        LayoutReader reader = new LayoutReader();
        Legend legend = Legend.of(source.lines());
        List<Passage> lines = new ArrayList<>();
        for (Passage line : source.lines()) {
            if (legend.explains(line)) {
                reader.draft.loose(line);
            } else {
                lines.add(legend.applied(withoutLeaders(line)));
            }
        }
        runs(lines).forEach(reader::run);
        return reader.draft.done();
    }

    /** Dots or stars that lead the eye from one cell to the next are a gap. */
    private static Passage withoutLeaders(Passage line) {
        if (!line.text().contains("....")
                && !line.text().contains("***")
                && !line.text().contains("~~~")) {
            return line;
        }
        Matcher leader = LEADER.matcher(line.text());
        List<Passage> parts = new ArrayList<>();
        int from = 0;
        while (leader.find()) {
            parts.add(line.part(from, leader.start()));
            parts.add(line.part(leader.start(), leader.end()).standingFor(" ".repeat(leader.end() - leader.start())));
            from = leader.end();
        }
        parts.add(line.part(from, line.length()));
        return from == 0 ? line : Passage.append(parts);
    }

    /** Lines that share a divider; blocks of free text stay apart, since an empty line parts them. */
    private record Run(Divider divider, List<Passage> lines) {}

    private static List<Run> runs(List<Passage> lines) {
        List<Run> runs = new ArrayList<>();
        for (List<Passage> block : blocks(lines)) {
            List<Passage> body =
                    block.stream().filter(l -> Heading.of(l).isEmpty()).toList();
            Divider divider = body.isEmpty() ? Divider.NONE : Divider.of(body);
            boolean goesOn = !runs.isEmpty()
                    && divider != Divider.NONE
                    && runs.getLast().divider() == divider
                    && !divider.isWeak();
            // A heading between two parts of a table does not end it.
            boolean headed = runs.size() > 1
                    && divider != Divider.NONE
                    && !divider.isWeak()
                    && runs.get(runs.size() - 2).divider() == divider
                    && runs.getLast().lines().stream()
                            .allMatch(l -> Heading.of(l).isPresent());
            if (headed) {
                List<Passage> headings = runs.removeLast().lines();
                runs.getLast().lines().addAll(headings);
            }
            if (goesOn || headed) {
                runs.getLast().lines().addAll(block);
            } else {
                runs.add(new Run(divider, new ArrayList<>(block)));
            }
        }
        return runs;
    }

    private static List<List<Passage>> blocks(List<Passage> lines) {
        List<List<Passage>> blocks = new ArrayList<>();
        List<Passage> block = new ArrayList<>();
        for (Passage line : lines) {
            boolean rule = RULE.matcher(line.text().strip()).matches();
            if (line.isBlank() || block.size() >= MOST_LINES_A_BLOCK) {
                if (!block.isEmpty()) {
                    blocks.add(block);
                    block = new ArrayList<>();
                }
            }
            if (!line.isBlank() && !rule) {
                block.add(line);
            }
        }
        if (!block.isEmpty()) {
            blocks.add(block);
        }
        return blocks;
    }

    private void run(Run run) {
        if (run.divider() == Divider.NONE) {
            new FreeText(draft).read(run.lines());
            return;
        }
        List<Part> parts = parts(run);
        for (Part part : parts) {
            part.headerLine().ifPresent(draft::loose);
            TableReader table = TableReader.of(part.header(), part.over(), part.rows());
            // A line by itself is no table, however it is spaced.
            boolean isDoubtful = run.divider().isWeak() || run.lines().size() == 1;
            if ((run.divider() == Divider.GAPS && part.header().isEmpty() && isUneven(part))
                    || (isDoubtful && part.header().isEmpty() && !table.hasColours())) {
                new FreeText(draft).read(part.lines());
            } else {
                table(part, table, run.divider());
            }
        }
    }

    /** The rows under one header. */
    private record Part(
            Optional<Passage> headerLine,
            List<Optional<ColumnKind>> header,
            List<Passage> over,
            List<Passage> lines,
            List<List<Passage>> rows,
            List<List<Passage>> cells) {

        Part() {
            this(Optional.empty(), List.of(), List.of(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        }

        Part(List<Optional<ColumnKind>> header, List<Passage> over, Passage line) {
            this(Optional.of(line), header, over, new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        }
    }

    private static List<Part> parts(Run run) {
        List<Part> parts = new ArrayList<>();
        boolean headed = false;
        for (List<Passage> under : headed(run)) {
            part(under, headed, run.divider()).ifPresent(parts::add);
            headed = true;
        }
        return parts;
    }

    /** The lines before the first header, and each header with those below it. */
    private static List<List<Passage>> headed(Run run) {
        List<List<Passage>> parts = new ArrayList<>(List.of(new ArrayList<>()));
        boolean first = true;
        for (Passage line : run.lines()) {
            List<Passage> cells = run.divider().split(line);
            if (cells.size() > 1) {
                boolean header = TableReader.header(cells, first).isPresent();
                if (header) {
                    parts.add(new ArrayList<>());
                }
                first = header;
            }
            parts.getLast().add(line);
        }
        return parts;
    }

    private static Optional<Part> part(List<Passage> under, boolean headed, Divider divider) {
        List<Passage> rows =
                under.stream().filter(l -> divider.split(l).size() > 1).toList();
        // Columns stand where this table has them: what is above its header has others.
        Optional<FixedColumns> fixed = (divider == Divider.GAPS
                        ? FixedColumns.of(rows)
                        : Optional.<FixedColumns>empty())
                .filter(f -> !headed
                        || TableReader.header(f.split(under.getFirst()), true).isPresent());
        Part part = new Part();
        for (Passage line : under) {
            List<Passage> parted = divider.split(line);
            boolean isRow = parted.size() > 1;
            boolean goesOn = !isRow && fixed.filter(f -> f.goesOn(line)).isPresent();
            List<Passage> cells =
                    isRow || goesOn ? fixed.map(f -> f.split(line)).orElse(parted) : parted;
            if (headed && part.headerLine().isEmpty()) {
                part = new Part(TableReader.header(cells, true).orElseThrow(), cells, line);
                continue;
            }
            part.lines().add(line);
            part.cells().add(cells);
            if (isRow) {
                part.rows().add(cells);
            }
        }
        return part.lines().isEmpty() && part.headerLine().isEmpty() ? Optional.empty() : Optional.of(part);
    }

    /** Lines of which many have one stretch only are not cells beside each other, but words with a wide blank here and there. */
    private static boolean isUneven(Part part) {
        long single = part.cells().stream()
                .filter(cells -> cells.stream().filter(c -> !c.isBlank()).count() == 1)
                .count();
        return single > MOST_SINGLE * part.cells().size();
    }

    /** A line above all rows that names neither circuit nor colour, though its words lie apart as cells do. */
    private static boolean isTitle(Passage line) {
        return Colours.count(line) == 0 && !Roles.names(line.folded()) && !Polarity.isSaid(line);
    }

    private void table(Part part, TableReader table, Divider divider) {
        int first = draft.count();
        // Where all of the table is, said in a line before or behind it; of several such lines nobody knows which.
        List<Passage> ofAll = IntStream.range(0, part.lines().size())
                .filter(i -> part.cells().get(i).size() == 1)
                .mapToObj(part.lines()::get)
                .filter(line -> Heading.of(line.slice(0, line.length())).isEmpty())
                .filter(line -> FreeText.placeOfAll(line).isPresent())
                .toList();
        for (int i = 0; i < part.lines().size(); i++) {
            Passage line = part.lines().get(i);
            List<Passage> cells = table.aligned(part.cells().get(i));
            if (ofAll.size() == 1 && line.equals(ofAll.getFirst())) {
                draft.loose(line);
                continue;
            }
            long filled = cells.stream().filter(c -> !c.isBlank()).count();
            Optional<Passage> heading = filled == 1 ? Heading.of(line.slice(0, line.length())) : Optional.empty();
            if (heading.isPresent() && !table.isWrapped(cells)) {
                draft.heading(heading.get());
            } else if (cells.size() > 1 && !draft.isEmpty() && table.isWrapped(cells)) {
                draft.replaceLast(table.joined(draft.last(), cells));
            } else if (draft.count() == first
                    && divider == Divider.GAPS
                    && part.header().isEmpty()
                    && isTitle(line)) {
                draft.loose(line);
            } else if (divider == Divider.GAPS && part.header().isEmpty() && Several.isSeveral(line)) {
                new FreeText(draft).between(line);
            } else if (cells.size() > 1 && (filled > 1 || divider != Divider.GAPS)) {
                table.entries(cells, draft.headings()).forEach(draft::add);
            } else {
                new FreeText(draft).between(line);
            }
        }
        if (ofAll.size() == 1) {
            Passage place = FreeText.placeOfAll(ofAll.getFirst()).orElseThrow();
            draft.saidOfAll(first, new Cell(ColumnKind.PLACE_OF_ALL, place, true));
        }
    }
}
