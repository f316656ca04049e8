package org.loomproof.pages.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardEvent;
import org.loomproof.book.card.CardId;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.card.Saved;
import org.loomproof.book.store.OpenBook;

/** The work log of one job: a card of its own beside the job's, under the key of the job's customer. */
public final class WorkLog {

    private final OpenBook book;
    private final CardId job;

    public WorkLog(OpenBook book, CardId job) {
        this.book = book;
        this.job = job;
    }

    /**
     * Writes entries down, all or none; durably, when this has returned. Those that were written down before, by their names, are
     * not written again.
     *
     * @return those that are written now; nothing when there is no such job any more, and nothing was written
     */
    public Optional<List<Entry>> add(Author who, List<Entry> entries) {
        List<Entry> written = new ArrayList<>();
        return book.cards()
                .beside(job, CardKind.WORK, who, "work.begun")
                .map(card -> book.cards().amend(card, who, "work.noted", now -> {
                    // What another device wrote meanwhile has other names.
                    written.clear();
                    written.addAll(missing(now, entries));
                    return texts(written);
                }))
                .filter(Saved.Done.class::isInstance)
                .map(saved -> List.copyOf(written));
    }

    private static List<Entry> missing(Card card, List<Entry> entries) {
        Map<String, Entry> missing = new LinkedHashMap<>();
        for (Entry entry : entries) {
            if (card.entries().find(entry.id()).isEmpty()) {
                missing.putIfAbsent(entry.id(), entry);
            }
        }
        return List.copyOf(missing.values());
    }

    private static Map<String, String> texts(List<Entry> entries) {
        return entries.stream().collect(Collectors.toMap(Entry::id, EntryText::of));
    }

    /** Every entry in the order in which they reached the book; those sent together in the order of the device's clock. */
    public List<Noted> all() {
        List<Noted> all = new ArrayList<>();
        for (CardEvent event : book.cards().events(CardId.beside(job, CardKind.WORK))) {
            event.changes().values().stream()
                    .map(WorkLog::own)
                    .sorted(Comparator.comparing(Entry::when).thenComparing(Entry::id))
                    .forEach(entry -> all.add(new Noted(entry, event.who(), event.at())));
        }
        return List.copyOf(all);
    }

    /** The entries that count: without those that were taken back, and without the taking back. */
    public List<Noted> standing() {
        List<Noted> all = all();
        var undone = all.stream()
                .filter(noted -> noted.work() instanceof Work.Undone)
                .map(noted -> ((Work.Undone) noted.work()).entry())
                .collect(Collectors.toSet());
        return all.stream()
                .filter(noted -> !(noted.work() instanceof Work.Undone) && !undone.contains(noted.id()))
                .toList();
    }

    private static Entry own(String text) {
        return EntryText.read(text).orElseThrow(() -> new IllegalStateException("an entry of our own cannot be read"));
    }
}
