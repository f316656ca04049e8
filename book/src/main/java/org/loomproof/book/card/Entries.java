package org.loomproof.book.card;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What stands on a card: short names and their text. Never changed; a change gives others.
 *
 * @param values by name, sorted
 */
public record Entries(SortedMap<String, String> values) {

    /** A card with nothing on it. */
    public static final Entries NONE = new Entries(new TreeMap<>());

    public Entries {
        values = Collections.unmodifiableSortedMap(new TreeMap<>(values));
    }

    /** Entries with these values. */
    public static Entries of(Map<String, String> values) {
        return new Entries(new TreeMap<>(values));
    }

    /** The text under a name; empty text when there is none. */
    public String get(String name) {
        return values.getOrDefault(name, "");
    }

    /** The text under a name, when there is any. */
    public Optional<String> find(String name) {
        return Optional.ofNullable(values.get(name)).filter(text -> !text.isBlank());
    }

    /** These entries with some written over; empty text takes an entry away. */
    public Entries with(Map<String, String> changes) {
        SortedMap<String, String> next = new TreeMap<>(values);
        changes.forEach((name, text) -> {
            if (text.isEmpty()) {
                next.remove(name);
            } else {
                next.put(name, text);
            }
        });
        return new Entries(next);
    }

    /** Of these changes those that change something. */
    public Map<String, String> differing(Map<String, String> changes) {
        SortedMap<String, String> left = new TreeMap<>(changes);
        left.entrySet().removeIf(change -> get(change.getKey()).equals(change.getValue()));
        return Collections.unmodifiableMap(left);
    }

    /** Only the entries of these names, as far as they are there. */
    public Entries only(Iterable<String> names) {
        SortedMap<String, String> kept = new TreeMap<>();
        names.forEach(name -> find(name).ifPresent(text -> kept.put(name, text)));
        return new Entries(kept);
    }

    /** No text of a card turns up in a log by accident. */
    @Override
    public String toString() {
        return "Entries" + values.keySet();
    }
}
