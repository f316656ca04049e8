package org.loomproof.workshop.brief.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.text.Entry.Mapping;
import org.loomproof.workshop.brief.text.Entry.Pair;
import org.loomproof.workshop.brief.text.Entry.Spot;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Phrase;

/**
 * A mapping that is being read. The keys asked for are the keys it may have: {@link #close()} notes a problem for every
 * other. A key with nothing behind it counts as left out, so that a form with blanks reads like one without.
 */
public final class MappingCursor {

    private static final Map<String, Boolean> YES_NO = yesNo();

    private final Problems problems;
    private final String path;
    private final Mapping mapping;
    private final boolean readable;
    private final Set<String> askedFor = new LinkedHashSet<>();

    MappingCursor(Problems problems, String path, Mapping mapping) {
        this(problems, path, mapping, true);
    }

    private MappingCursor(Problems problems, String path, Mapping mapping, boolean readable) {
        this.problems = problems;
        this.path = path;
        this.mapping = mapping;
        this.readable = readable;
    }

    /** Stands in for an entry that is no mapping: has nothing and misses nothing. */
    static MappingCursor unreadable(Problems problems, String path, Spot at) {
        return new MappingCursor(problems, path, new Mapping(at, List.of(), 1), false);
    }

    /** Where it starts. */
    public Place place() {
        return new Place(problems.file(), mapping.at().line(), mapping.at().column(), path);
    }

    /** The place of an entry that is not there: it would stand in this mapping. */
    public Place placeOf(String key) {
        return findRaw(key)
                .map(pair -> cursor(pair).place())
                .orElse(new Place(
                        problems.file(), mapping.at().line(), mapping.at().column(), join(key)));
    }

    /** Notes a problem with the mapping as a whole. */
    public void problem(ProblemKind kind, String found, Phrase wanted, Phrase hint) {
        problems.add(place(), kind, found, wanted, hint);
    }

    /** The entry behind the key, if it is said. */
    public Optional<Cursor> find(String key) {
        askedFor.add(key);
        return findRaw(key).map(this::cursor).filter(cursor -> !cursor.isNotSaid());
    }

    /** The entry behind the key; a problem is noted when it is not said. */
    public Optional<Cursor> need(String key) {
        Optional<Cursor> found = find(key);
        if (found.isEmpty()) {
            missing(key, Phrase.of("problem.wanted.entry", key));
        }
        return found;
    }

    /** Notes that the key is missing, and what should stand there. */
    public void missing(String key, Phrase wanted) {
        if (readable) {
            problems.add(placeOf(key), ProblemKind.MISSING, "", wanted);
        }
    }

    /** Free text that must be there. */
    public String text(String key) {
        return need(key).map(Cursor::text).orElse(Cursor.UNREADABLE);
    }

    /** Free text, empty when it is not said. */
    public String textOrEmpty(String key) {
        return find(key).map(Cursor::text).orElse("");
    }

    /** An id that must be there. */
    public String id(String key) {
        return need(key).map(Cursor::id).orElse(Cursor.UNREADABLE);
    }

    /** A word that must be there; the enum's first constant stands in when it is not. */
    public <E extends Enum<E>> E word(String key, Class<E> type) {
        Map<String, E> words = Words.all(type);
        E standIn = words.values().iterator().next();
        Optional<Cursor> found = find(key);
        if (found.isEmpty()) {
            missing(key, Phrase.of("problem.wanted.one-of", List.copyOf(words.keySet())));
        }
        return found.flatMap(cursor -> cursor.word(words)).orElse(standIn);
    }

    /** A word, or what holds when it is not said. */
    public <E extends Enum<E>> E wordOr(String key, E notSaid) {
        Map<String, E> words = Words.all(notSaid.getDeclaringClass());
        return find(key).flatMap(cursor -> cursor.word(words)).orElse(notSaid);
    }

    /** Yes or no, if it is said. */
    public Optional<Boolean> findYesNo(String key) {
        return find(key).flatMap(cursor -> cursor.word(YES_NO));
    }

    /** Yes or no, or what holds when it is not said. */
    public boolean yesNoOr(String key, boolean notSaid) {
        return findYesNo(key).orElse(notSaid);
    }

    /** Items of a list; none when it is not said. */
    public List<Cursor> items(String key) {
        return find(key).map(Cursor::items).orElse(List.of());
    }

    /** Items of a list that must be there and have at least one. */
    public List<Cursor> itemsNeeded(String key) {
        Optional<Cursor> found = find(key);
        List<Cursor> items = found.map(Cursor::items).orElse(List.of());
        if (found.isEmpty() || found.get().isEmptyList()) {
            missing(key, Phrase.of("problem.wanted.item"));
        }
        return items;
    }

    /** A mapping that must be there. */
    public MappingCursor mapping(String key) {
        return need(key).map(Cursor::mapping).orElseGet(() -> unreadable(problems, join(key), mapping.at()));
    }

    /** A mapping that may be left out; then it is an empty one. */
    public MappingCursor mappingOrEmpty(String key) {
        return find(key)
                .map(Cursor::mapping)
                .orElseGet(() -> new MappingCursor(problems, join(key), new Mapping(mapping.at(), List.of(), 1)));
    }

    /** The entries of a mapping whose keys are names of the reader's own, in the order of the text. */
    public List<KeyedCursor> listKeyed() {
        List<KeyedCursor> all = new ArrayList<>();
        for (Pair pair : mapping.pairs()) {
            askedFor.add(pair.key().text());
            all.add(new KeyedCursor(new Cursor(problems, path, pair.key()), cursor(pair)));
        }
        return all;
    }

    /** A key of the reader's own, and what stands behind it. */
    public record KeyedCursor(Cursor key, Cursor value) {}

    /** The keys that are there, in the order of the text. */
    public List<String> keys() {
        return mapping.pairs().stream().map(pair -> pair.key().text()).toList();
    }

    /** Notes a problem for every key that was never asked for. To be called when all that may be there has been read. */
    public void close() {
        if (!readable) {
            return;
        }
        for (Pair pair : mapping.pairs()) {
            String key = pair.key().text();
            if (!askedFor.contains(key)) {
                Spot at = pair.key().at();
                problems.add(
                        new Place(problems.file(), at.line(), at.column(), join(key)),
                        ProblemKind.UNKNOWN_KEY,
                        key,
                        Phrase.of("problem.wanted.one-of", List.copyOf(askedFor)),
                        key.matches("\\d.*") ? Phrase.of("problem.hint.comma-ends") : Words.hint(key, askedFor));
            }
        }
    }

    private static Map<String, Boolean> yesNo() {
        Map<String, Boolean> words = new LinkedHashMap<>();
        words.put("yes", true);
        words.put("no", false);
        return words;
    }

    private Optional<Pair> findRaw(String key) {
        return mapping.pairs().stream()
                .filter(pair -> pair.key().text().equals(key))
                .findFirst();
    }

    private Cursor cursor(Pair pair) {
        return new Cursor(problems, join(pair.key().text()), pair.value());
    }

    private String join(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }
}
