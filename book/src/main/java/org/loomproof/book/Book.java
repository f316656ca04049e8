package org.loomproof.book;

import java.nio.file.Path;
import java.time.Clock;
import org.loomproof.book.key.Passphrase;
import org.loomproof.book.key.Stretching;
import org.loomproof.book.place.BookPlace;
import org.loomproof.book.place.Refusal;
import org.loomproof.book.place.Refused;
import org.loomproof.book.place.Tried;
import org.loomproof.book.store.Backup;
import org.loomproof.book.store.OpenBook;

/** The doors of the job book. Whatever goes wrong at one of them is an answer, and has changed nothing. */
public final class Book {

    private Book() {}

    /** Makes a new book, locked by a passphrase. Where it is lost nobody can read the book again. */
    public static Tried<OpenBook> create(BookPlace place, Passphrase passphrase, Stretching stretching, Clock clock) {
        return Tried.of(() -> {
            if (!passphrase.isLongEnough()) {
                throw new Refused(Refusal.PASSPHRASE_TOO_SHORT);
            }
            return OpenBook.create(place, passphrase, stretching, clock);
        });
    }

    /** Opens a book that is there. */
    public static Tried<OpenBook> open(BookPlace place, Passphrase passphrase, Clock clock) {
        return Tried.of(() -> OpenBook.open(place, passphrase, clock));
    }

    /**
     * Copies a book, open or not and in use or not, into a new file as it is at one moment. Needs no passphrase: what is sealed
     * stays so.
     *
     * @return how many rows were copied
     */
    public static Tried<Long> backup(BookPlace place, Path into) {
        return Tried.of(() -> Backup.write(place, into));
    }

    /**
     * Puts a backup where no book is.
     *
     * @return how many rows were copied
     */
    public static Tried<Long> restore(Path backup, BookPlace place) {
        return Tried.of(() -> Backup.restore(backup, place));
    }
}
