package org.loomproof.pages.desk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardEvent;
import org.loomproof.book.card.Entries;
import org.loomproof.pages.door.People;

/**
 * One change of a card, to be read by people.
 *
 * @param version of the card after it
 * @param at when
 * @param who their name; empty text for the console
 * @param key what was done, in the message files
 * @param changes entry by entry, those that people write
 */
public record Past(int version, Instant at, String who, String key, List<Change> changes) {

    /** What the program writes down for itself. */
    private static final Set<String> OWN = Set.of(
            "run",
            "run-before",
            "built-run",
            "stage",
            "needs",
            "sheet-from",
            "sheet-from-version",
            "kit-from",
            "kit-from-version");

    /**
     * An entry before and after; empty text where there was none, or is none now.
     *
     * @param lines what differs, of texts of several lines; no lines of a short one
     */
    public record Change(String name, String before, String after, LineDiff lines) {

        /** True for a text of several lines. */
        public boolean isLong() {
            return before.contains("\n") || after.contains("\n");
        }
    }

    /** Every change of a card, the last one first. */
    public static List<Past> of(List<CardEvent> events, People people) {
        List<Past> all = new ArrayList<>();
        Entries now = Entries.NONE;
        for (CardEvent event : events) {
            List<Change> changes = new ArrayList<>();
            for (Map.Entry<String, String> entry : new TreeMap<>(event.changes()).entrySet()) {
                String before = now.get(entry.getKey());
                if (!OWN.contains(entry.getKey()) && !before.equals(entry.getValue())) {
                    changes.add(change(entry.getKey(), before, entry.getValue()));
                }
            }
            now = now.with(event.changes());
            all.addFirst(
                    new Past(event.version(), event.at(), people.name(event.who()), "event." + event.what(), changes));
        }
        return List.copyOf(all);
    }

    private static Change change(String name, String before, String after) {
        Change change = new Change(name, before, after, new LineDiff(List.of()));
        return change.isLong() ? new Change(name, before, after, LineDiff.between(before, after)) : change;
    }

    /** What people wrote on a card, entry by entry. */
    public static Map<String, String> written(Card card) {
        Map<String, String> written = new TreeMap<>(card.entries().values());
        written.keySet().removeAll(OWN);
        return written;
    }
}
