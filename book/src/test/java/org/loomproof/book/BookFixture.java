package org.loomproof.book;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.book.card.Author;
import org.loomproof.book.card.Card;
import org.loomproof.book.card.CardId;
import org.loomproof.book.card.CardLine;
import org.loomproof.book.card.Listing;
import org.loomproof.book.card.Saved;
import org.loomproof.book.key.Passphrase;
import org.loomproof.book.key.Stretching;
import org.loomproof.book.place.BookPlace;
import org.loomproof.book.place.Refusal;
import org.loomproof.book.place.Tried;
import org.loomproof.book.store.OpenBook;

/** A book at a fresh place for each test, and what several tests do with it. */
abstract class BookFixture {

    static final Stretching QUICK = new Stretching(64, 1, 1);
    static final Passphrase PASSPHRASE = Passphrase.of("four brass kettles sing");

    static final Author ADA = Author.of(CardId.fresh());
    static final Author BO = Author.of(CardId.fresh());
    static final Map<String, String> CUSTOMER =
            Map.of("name", "Wilhelmine Östergård", "phone", "0155 7700 1234", "address", "Quince Lane 8");
    static final Map<String, String> VAN = Map.of(
            "plate", "QX 481 LM",
            "number", "11111111111111111",
            "make", "Marrow",
            "model", "Courier",
            "year", "2011",
            "stage", "called",
            "due", "2026-11-30",
            "hidden", "controller behind the spare wheel well");

    @TempDir
    Path folder;

    BookPlace place = new BookPlace.InFile(Path.of("unset"));
    Optional<OpenBook> open = Optional.empty();

    /** A place where no book is. */
    abstract BookPlace freshPlace();

    /** The files that hold the book at the place, after everything was written out. */
    abstract List<Path> filesOnDisk(BookPlace at);

    @BeforeEach
    void makeBook() {
        place = freshPlace();
        open = Optional.of(
                Book.create(place, PASSPHRASE, QUICK, Clock.systemUTC()).orThrow());
    }

    @AfterEach
    void closeBook() {
        open.ifPresent(OpenBook::close);
    }

    OpenBook book() {
        return open.orElseThrow();
    }

    Card addVan() {
        return book().cards().addCustomerWithJob(ADA, "job.called", CUSTOMER, VAN);
    }

    void reopen() {
        closeBook();
        open = Optional.of(Book.open(place, PASSPHRASE, Clock.systemUTC()).orThrow());
    }

    /** Writes past the book, as somebody with the file or the server could. */
    abstract void tamper(String sql);

    BookPlace place() {
        return place;
    }

    List<CardId> found(Listing listing) {
        return book().cards().list(listing).stream().map(CardLine::id).toList();
    }

    static Card saved(Saved saved) {
        return ((Saved.Done) saved).card();
    }

    static Refusal refusal(Tried<?> tried) {
        return switch (tried) {
            case Tried.Not<?>(Refusal why) -> why;
            case Tried.Done<?>(Object value) -> throw new AssertionError("not refused, but " + value);
        };
    }
}
