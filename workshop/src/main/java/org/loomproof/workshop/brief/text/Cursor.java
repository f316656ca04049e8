package org.loomproof.workshop.brief.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.loomproof.workshop.brief.text.Entry.Listing;
import org.loomproof.workshop.brief.text.Entry.Mapping;
import org.loomproof.workshop.brief.text.Entry.Scalar;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Phrase;

/**
 * One entry that is being read. Every reading gives a value: where the text does not yield one, a problem is noted and a
 * stand-in is given so that reading goes on and finds the other problems. A stand-in never leaves the reader, since what
 * comes with a problem is thrown away.
 */
public final class Cursor {

    /** Stands in for an id or a text that could not be read; no id can be spelled so. */
    public static final String UNREADABLE = "?";

    /** Items in one list: more than any car or kit has, few enough to compare each with each. */
    static final int MOST_ITEMS = 1000;

    private static final int LONGEST_TEXT = 4000;
    private static final Pattern ID = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}._+/-]{0,79}");

    private final Problems problems;
    private final String path;
    private final Entry entry;

    Cursor(Problems problems, String path, Entry entry) {
        this.problems = problems;
        this.path = path;
        this.entry = entry;
    }

    /** Where it stands. */
    public Place place() {
        return new Place(problems.file(), entry.at().line(), entry.at().column(), path);
    }

    /** Notes a problem here. */
    public void problem(ProblemKind kind, Phrase wanted, Phrase hint) {
        problems.add(place(), kind, found(), wanted, hint);
    }

    /** Notes a problem here that has no hint. */
    public void problem(ProblemKind kind, Phrase wanted) {
        problems.add(place(), kind, found(), wanted);
    }

    /** What stands here, for a reader: the value, or what sort of entry it is. */
    public String found() {
        return switch (entry) {
            case Scalar scalar -> scalar.text();
            case Listing listing -> "[…]";
            case Mapping mapping -> "{…}";
        };
    }

    /** True for a single value. */
    public boolean isText() {
        return entry instanceof Scalar;
    }

    /** True for a mapping. */
    public boolean isMapping() {
        return entry instanceof Mapping;
    }

    /** True for a key with nothing behind it. */
    boolean isNotSaid() {
        return entry instanceof Scalar scalar && scalar.isNotSaid();
    }

    /** True for a list without items. */
    boolean isEmptyList() {
        return entry instanceof Listing listing && listing.items().isEmpty();
    }

    /** Free text of bounded length. */
    public String text() {
        if (!(entry instanceof Scalar scalar)) {
            problem(ProblemKind.WRONG_SHAPE, Phrase.of("problem.wanted.text"), Phrase.of("problem.hint.quotes"));
            return UNREADABLE;
        }
        if (scalar.text().length() > LONGEST_TEXT) {
            problem(ProblemKind.OUT_OF_RANGE, Phrase.of("problem.wanted.shorter-text", Integer.toString(LONGEST_TEXT)));
            return UNREADABLE;
        }
        return scalar.text().strip();
    }

    /** Text of any length, exactly as written; empty, with a problem noted, when it is none. */
    public Optional<String> wholeText() {
        if (entry instanceof Scalar scalar) {
            return Optional.of(scalar.text());
        }
        problem(ProblemKind.WRONG_SHAPE, Phrase.of("problem.wanted.text"));
        return Optional.empty();
    }

    /** Notes that something is missing in what stands here. */
    public void missing(Phrase wanted, Phrase hint) {
        problems.add(place(), ProblemKind.MISSING, "", wanted, hint);
    }

    /** A name for something: letters, digits and {@code . _ + / -}, no spaces. */
    public String id() {
        if (!isText()) {
            return text();
        }
        String text = text();
        if (!ID.matcher(text).matches()) {
            problem(ProblemKind.WRONG_SHAPE, Phrase.of("problem.wanted.id"), Phrase.of("problem.hint.id"));
            return UNREADABLE;
        }
        return text;
    }

    /** The value behind one of the accepted words; empty, with a problem noted, for any other word. */
    public <E> Optional<E> word(Map<String, E> accepted) {
        return known(accepted, ProblemKind.NOT_ONE_OF);
    }

    /** What the name stands for; empty, with a problem noted, when nothing has that name. */
    public <E> Optional<E> reference(Map<String, E> named) {
        return known(named, ProblemKind.UNKNOWN_REFERENCE);
    }

    private <E> Optional<E> known(Map<String, E> accepted, ProblemKind otherwise) {
        String text = text();
        return isText() ? part(text, otherwise, accepted) : Optional.empty();
    }

    /** What one word of the text here stands for; empty, with a problem of that kind noted, when it stands for nothing. */
    public <E> Optional<E> part(String word, ProblemKind otherwise, Map<String, E> accepted) {
        E meant = accepted.get(word);
        if (meant == null) {
            Phrase wanted = accepted.isEmpty()
                    ? Phrase.of("problem.wanted.known-id")
                    : Phrase.of("problem.wanted.one-of", List.copyOf(accepted.keySet()));
            problems.add(place(), otherwise, word, wanted, Words.hint(word, accepted.keySet()));
        }
        return Optional.ofNullable(meant);
    }

    /** Items of a list; a single value is taken as a list of one. */
    public List<Cursor> items() {
        return switch (entry) {
            case Scalar scalar -> List.of(this);
            case Mapping mapping -> {
                problem(ProblemKind.WRONG_SHAPE, Phrase.of("problem.wanted.list"), Phrase.of("problem.hint.dash"));
                yield List.of();
            }
            case Listing listing -> itemsOf(listing);
        };
    }

    private List<Cursor> itemsOf(Listing listing) {
        if (listing.items().size() > MOST_ITEMS) {
            problem(ProblemKind.OUT_OF_RANGE, Phrase.of("problem.wanted.fewer-items", Integer.toString(MOST_ITEMS)));
            return List.of();
        }
        List<Cursor> items = new ArrayList<>();
        for (Entry item : listing.items()) {
            items.add(new Cursor(problems, path + "[" + label(item, items.size()) + "]", item));
        }
        return items;
    }

    /** An item is called by its id where it has one, since lines move and ids stay; otherwise by its number from 0. */
    private static String label(Entry item, int index) {
        if (item instanceof Mapping mapping) {
            for (Entry.Pair pair : mapping.pairs()) {
                if (pair.key().text().equals("id")
                        && pair.value() instanceof Scalar id
                        && ID.matcher(id.text()).matches()) {
                    return id.text();
                }
            }
        }
        return Integer.toString(index);
    }

    /** Keys with their values; an empty one, with a problem noted, when it is something else. */
    public MappingCursor mapping() {
        if (entry instanceof Mapping mapping) {
            return new MappingCursor(problems, path, mapping);
        }
        problem(ProblemKind.WRONG_SHAPE, Phrase.of("problem.wanted.mapping"), Phrase.of("problem.hint.mapping"));
        return MappingCursor.unreadable(problems, path, entry.at());
    }

    /** A mapping that stands here with nothing said in it. */
    public MappingCursor withNothingSaid() {
        return new MappingCursor(problems, path, new Mapping(entry.at(), List.of(), 1));
    }
}
