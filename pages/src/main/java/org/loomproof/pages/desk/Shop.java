package org.loomproof.pages.desk;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import org.loomproof.book.Book;
import org.loomproof.book.card.Author;
import org.loomproof.book.key.Passphrase;
import org.loomproof.book.key.Stretching;
import org.loomproof.book.place.BookPlace;
import org.loomproof.book.place.Refusal;
import org.loomproof.book.place.Tried;
import org.loomproof.book.store.OpenBook;
import org.loomproof.pages.door.People;
import org.loomproof.pages.door.Role;

/** The book of this server. It starts locked, unless somebody at the machine gave a key file, and is unlocked once for everybody. */
public final class Shop implements AutoCloseable {

    private final BookPlace place;
    private final Clock clock;
    private final AtomicReference<@Nullable Opened> open = new AtomicReference<>();

    /** The background begins with the unlocked book and ends before it: while it is locked, work waits. */
    private record Opened(OpenBook book, Background background) {}

    public Shop(BookPlace place, Clock clock) {
        this.place = place;
        this.clock = clock;
    }

    /** The clock that pages and store share. */
    public Clock clock() {
        return clock;
    }

    /** Today, where the shop is. */
    public String today() {
        return LocalDate.ofInstant(clock.instant(), ZoneId.systemDefault()).toString();
    }

    /** The open book; nothing while it is locked. */
    public Optional<OpenBook> book() {
        return Optional.ofNullable(open.get()).map(Opened::book);
    }

    /** The work in the background; nothing while the book is locked. */
    public Optional<Background> background() {
        return Optional.ofNullable(open.get()).map(Opened::background);
    }

    /** True when there is no book at the place yet. */
    public boolean isNew() {
        return open.get() == null
                && Book.open(place, Passphrase.of(""), clock) instanceof Tried.Not<OpenBook>(Refusal why)
                && why == Refusal.NO_BOOK;
    }

    /** Unlocks the book for everybody, or says why not. */
    public synchronized Optional<Refusal> unlock(Passphrase passphrase) {
        return open.get() != null ? Optional.empty() : keep(Book.open(place, passphrase, clock));
    }

    /** Makes the book, with its first owner. */
    public synchronized Optional<Refusal> make(
            Passphrase passphrase, Stretching stretching, String owner, String signIn, String password) {
        Optional<Refusal> refusal = keep(Book.create(place, passphrase, stretching, clock));
        if (refusal.isEmpty()) {
            new People(book().orElseThrow().cards()).add(Author.CONSOLE, owner, signIn, password, Role.OWNER);
        }
        return refusal;
    }

    private Optional<Refusal> keep(Tried<OpenBook> tried) {
        return switch (tried) {
            case Tried.Not<OpenBook>(Refusal why) -> Optional.of(why);
            case Tried.Done<OpenBook>(OpenBook opened) -> {
                open.set(new Opened(opened, Background.start(opened)));
                yield Optional.empty();
            }
        };
    }

    /** Where the book lies, to be told to an owner. */
    public BookPlace place() {
        return place;
    }

    @Override
    public void close() {
        Opened opened = open.getAndSet(null);
        if (opened != null) {
            opened.background().close();
            opened.book().close();
        }
    }
}
