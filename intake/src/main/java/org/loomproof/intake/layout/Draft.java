package org.loomproof.intake.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.loomproof.intake.decode.Passage;

/** The records found so far, with the headings in force; lines that are no record go to one, or are kept as loose. */
final class Draft {

    private static final Pattern FOOTNOTE =
            Pattern.compile("^\\s*([*\u2020\u2021]{1,3}|\\(?\\d\\)|\\[\\d\\]|\\d\\))\\s*(?=\\S)");

    private final List<RawEntry> entries = new ArrayList<>();
    private final List<Passage> loose = new ArrayList<>();
    private List<Passage> headings = List.of();

    void add(RawEntry entry) {
        entries.add(entry);
    }

    void replaceLast(RawEntry entry) {
        entries.set(entries.size() - 1, entry);
    }

    int count() {
        return entries.size();
    }

    /** Adds to the records since the given one, but not to the last, what was said of them all. */
    void ofAllSince(int from, Passage said) {
        for (int i = from; i + 1 < entries.size(); i++) {
            List<Cell> cells = new ArrayList<>(entries.get(i).cells());
            cells.add(new Cell(ColumnKind.FREE, said, true));
            entries.set(
                    i,
                    new RawEntry(
                            cells, entries.get(i).headings(), entries.get(i).notes()));
        }
    }

    /** Gives a cell to all records since the given one: what is said once for them all. What is said first holds. */
    void saidOfAll(int from, Cell said) {
        if (from >= entries.size() || entries.get(from).has(said.kind())) {
            return;
        }
        for (int i = from; i < entries.size(); i++) {
            List<Cell> cells = new ArrayList<>(entries.get(i).cells());
            cells.add(said);
            entries.set(
                    i,
                    new RawEntry(
                            cells, entries.get(i).headings(), entries.get(i).notes()));
        }
    }

    /** Puts the headings back that were in force before. */
    void headings(List<Passage> before) {
        headings = before;
    }

    boolean isEmpty() {
        return entries.isEmpty();
    }

    RawEntry last() {
        return entries.getLast();
    }

    List<Passage> headings() {
        return headings;
    }

    void heading(Passage heading) {
        headings = Heading.under(headings, heading);
        loose.add(heading);
    }

    void loose(Passage line) {
        loose.add(line);
    }

    /** A line without a record of its own: a footnote to all rows that bear its mark, else a note to the last record. */
    void note(Passage line) {
        if (!footnote(line)) {
            if (entries.isEmpty()) {
                loose.add(line);
            } else {
                replaceLast(withNote(last(), line));
            }
        }
    }

    boolean footnote(Passage line) {
        Matcher mark = FOOTNOTE.matcher(line.text());
        if (!mark.find()) {
            return false;
        }
        boolean found = false;
        Passage note = line.slice(mark.end(), line.length());
        for (int i = 0; i < entries.size(); i++) {
            if (bears(entries.get(i), mark.group(1))) {
                entries.set(i, withNote(entries.get(i), note));
                found = true;
            }
        }
        return found;
    }

    private static boolean bears(RawEntry entry, String mark) {
        return entry.cells().stream()
                .anyMatch(c -> c.text().text().stripTrailing().endsWith(mark)
                        && c.text().text().strip().length() > mark.length());
    }

    private static RawEntry withNote(RawEntry entry, Passage note) {
        List<Passage> notes = new ArrayList<>(entry.notes());
        notes.add(note);
        return new RawEntry(entry.cells(), entry.headings(), notes);
    }

    LaidOut done() {
        List<RawEntry> single =
                entries.stream().flatMap(e -> Several.rows(e).stream()).toList();
        return new LaidOut(References.followed(single), loose);
    }
}
