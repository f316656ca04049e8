package org.loomproof.pages.desk;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardId;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.card.Listing;
import org.loomproof.book.card.Saved;
import org.loomproof.book.store.OpenBook;

/** Vehicle sheets and kits that all jobs share. A job works on a copy of its own, and can give it back. */
public final class Shared {

    /** The entry with the name that lists show. */
    public static final String TITLE = "title";

    /** The entry of a kit with what is usually ordered with it, which the nightly proof takes for an order. */
    public static final String USUAL_ORDER = "order";

    private static final int MOST = 1_000;

    private final OpenBook book;

    public Shared(OpenBook book) {
        this.book = book;
    }

    /** Which kind is shared under the name of a job's text; nothing for texts that each job has for itself. */
    public static Optional<CardKind> kind(String text) {
        return switch (text) {
            case "sheet" -> Optional.of(CardKind.SHEET);
            case "kit" -> Optional.of(CardKind.KIT);
            default -> Optional.empty();
        };
    }

    /** The entries that are texts: the first one is that of the kind itself. */
    public static List<String> texts(CardKind kind) {
        return kind == CardKind.KIT ? List.of(kind.word(), USUAL_ORDER) : List.of(kind.word());
    }

    /** All of a kind, by title. */
    public List<Card> all(CardKind kind) {
        return book.cards().list(Listing.all(kind, MOST)).stream()
                .flatMap(line -> book.cards().find(line.id()).stream())
                .sorted((one, other) -> one.get(TITLE).compareToIgnoreCase(other.get(TITLE)))
                .toList();
    }

    /** The one that a job took its text from. */
    public Optional<Card> takenBy(Card job, String text) {
        return CardId.in(job.get(text + "-from")).flatMap(book.cards()::find);
    }

    /** What a job writes when it takes a copy: the text, and from which it was taken as it stood at which change. */
    public static Map<String, String> taken(Card shared) {
        String text = shared.kind().word();
        return Map.of(
                text,
                shared.get(text),
                text + "-from",
                shared.id().value(),
                text + "-from-version",
                Integer.toString(shared.version()));
    }

    /**
     * Gives the text of a job back: to the one that it was taken from, unless somebody changed that one meanwhile; otherwise as a
     * new one.
     *
     * @param title of a new one
     * @param asNew true when it shall be a new one even where it was taken from one
     * @return what the job writes in turn; nothing, with nothing changed, when the shared one was changed meanwhile
     */
    public Optional<Map<String, String>> give(Card job, String text, String title, boolean asNew, Author who) {
        CardKind kind = kind(text).orElseThrow();
        Optional<Card> from = asNew ? Optional.empty() : takenBy(job, text);
        if (from.isEmpty()) {
            return Optional.of(
                    taken(book.cards().add(kind, who, text + ".given", Map.of(TITLE, title, text, job.get(text)))));
        }
        int seen = Integer.parseInt(job.get(text + "-from-version"));
        Saved saved =
                book.cards().change(from.orElseThrow().id(), seen, who, text + ".given", Map.of(text, job.get(text)));
        return saved instanceof Saved.Done(Card now) ? Optional.of(taken(now)) : Optional.empty();
    }

    /** The texts and the title of one as a form gives them; a title that is missing is taken from the kind. */
    public static Map<String, String> entries(CardKind kind, String title, Map<String, String> texts) {
        Map<String, String> entries = new HashMap<>(texts);
        entries.put(TITLE, title.isEmpty() ? kind.word() : title);
        return entries;
    }
}
