package org.loomproof.pages.desk;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardKind;
import org.loomproof.book.card.Listing;
import org.loomproof.book.store.OpenBook;
import org.loomproof.workshop.brief.text.CsvLines;
import org.loomproof.workshop.brief.text.SourceText;

/** How long each kind of work took in this shop: what later quotes go by once a kind was timed often enough. */
public final class Timings {

    private static final String FILE = "minutes.csv";
    private static final List<String> HEADER = List.of("work", "minutes");

    private final OpenBook book;

    public Timings(OpenBook book) {
        this.book = book;
    }

    /**
     * Counts how long the work of a job took, in place of what was counted of it before.
     *
     * @param lines each {@code work,minutes} as in a file of minutes
     */
    public void count(Card job, Stream<String> lines, Author who) {
        String said = lines.collect(Collectors.joining("\n"));
        Optional<Card> card = card();
        if (card.isPresent()) {
            JobTally.write(book, card, job, said, who);
        } else if (!said.isEmpty()) {
            book.cards()
                    .add(CardKind.TIMINGS, who, "tally.counted", Map.of(job.id().value(), said));
        }
    }

    /** All of it behind what the shop wrote down itself, as a file of minutes would be; nothing where there is neither. */
    Optional<SourceText> with(Optional<SourceText> written) {
        Stream<String> own = written.stream()
                .flatMap(text -> new CsvLines(FILE, HEADER).of(text.text()).stream())
                .map(line -> String.join(",", line.cells()));
        Stream<String> counted = card().stream()
                .flatMap(card -> card.entries().values().values().stream())
                .flatMap(String::lines);
        List<String> all = Stream.concat(own, counted).toList();
        return all.isEmpty()
                ? Optional.empty()
                : Optional.of(new SourceText(FILE, String.join(",", HEADER) + "\n" + String.join("\n", all) + "\n"));
    }

    /** What was counted of jobs; nothing before the first one. */
    public Optional<SourceText> text() {
        return with(Optional.empty());
    }

    private Optional<Card> card() {
        return book.cards().list(Listing.all(CardKind.TIMINGS, 1)).stream()
                .findFirst()
                .flatMap(line -> book.cards().find(line.id()));
    }
}
