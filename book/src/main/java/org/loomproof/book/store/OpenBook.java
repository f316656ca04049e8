package org.loomproof.book.store;

import java.time.Clock;
import org.loomproof.book.key.Passphrase;
import org.loomproof.book.key.Stretching;
import org.loomproof.book.place.BookPlace;
import org.loomproof.book.place.Refusal;
import org.loomproof.book.place.Refused;
import org.loomproof.book.place.Tried;

/** A book that was unlocked. Several threads and, on a server, several processes may work in it at once. */
public final class OpenBook implements AutoCloseable {

    private final Database database;
    private final Keys keys;
    private final Cards cards;
    private final Attachments attachments;
    private final Customers customers;

    private OpenBook(Database database, Keys keys, Clock clock) {
        this.database = database;
        this.keys = keys;
        this.cards = new Cards(database, keys, clock);
        this.attachments = new Attachments(database, keys, clock);
        this.customers = new Customers(database, keys, cards, attachments, clock);
    }

    /** A new book; {@link Refused} when one is there. */
    public static OpenBook create(BookPlace place, Passphrase passphrase, Stretching stretching, Clock clock) {
        Database database = Database.create(place);
        try {
            Keys keys = database.jdbi().inTransaction(handle -> Keys.create(handle, passphrase, stretching));
            return new OpenBook(database, keys, clock);
        } catch (RuntimeException e) {
            database.close();
            throw e;
        }
    }

    /** A book that is there; {@link Refused} when it is none of ours, or the passphrase is another. */
    public static OpenBook open(BookPlace place, Passphrase passphrase, Clock clock) {
        Database database = Database.open(place);
        try {
            Keys keys = database.jdbi().withHandle(handle -> Keys.open(handle, passphrase));
            return new OpenBook(database, keys, clock);
        } catch (RuntimeException e) {
            database.close();
            throw e;
        }
    }

    /** Its tables, for those who keep something else beside cards. */
    Database database() {
        return database;
    }

    /** Its cards. */
    public Cards cards() {
        return cards;
    }

    /** Its photos and papers. */
    public Attachments attachments() {
        return attachments;
    }

    /** What customers may ask. */
    public Customers customers() {
        return customers;
    }

    /** Locks the book with another passphrase; the old one must be shown again. */
    public Tried<Boolean> changePassphrase(Passphrase old, Passphrase next, Stretching stretching) {
        return Tried.of(() -> {
            if (!next.isLongEnough()) {
                throw new Refused(Refusal.PASSPHRASE_TOO_SHORT);
            }
            database.jdbi().useTransaction(handle -> {
                Keys.open(handle, old);
                keys.lockWith(handle, next, stretching);
            });
            database.forget();
            return true;
        });
    }

    /** How many sealed values there are, each opened once; {@link Refusal#DAMAGED} when one does not open. */
    public Tried<Long> check() {
        return Tried.of(() -> new SealCheck(database, keys).count());
    }

    @Override
    public void close() {
        database.close();
    }
}
