package org.loomproof.book.store;

import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.loomproof.book.card.CardId;
import org.loomproof.book.key.Key;
import org.loomproof.book.key.Passphrase;
import org.loomproof.book.key.Stretching;
import org.loomproof.book.place.Refusal;
import org.loomproof.book.place.Refused;

/**
 * The keys of an open book. A passphrase gives the key that opens the book's key; that one opens the keys of customers and makes
 * the marks of words. Another passphrase seals the book's key anew, and nothing else has to be written.
 */
final class Keys {

    /** The form of the tables and seals that this program writes. */
    static final int FORMAT = 1;

    private static final String BOOK_KEY = "book key " + FORMAT;

    private final Key book;
    private final Key wrapping;
    private final Key words;
    private final CardId shop;

    private Keys(Key book, CardId shop) {
        this.book = book;
        this.wrapping = book.derived("customer keys");
        this.words = book.derived("marks of words");
        this.shop = shop;
    }

    /** Keys for a new book, locked by the passphrase. */
    static Keys create(Handle handle, Passphrase passphrase, Stretching stretching) {
        Keys keys = new Keys(Key.random(), CardId.fresh());
        handle.createUpdate("INSERT INTO book_lock (one, format, memory_kib, passes, lanes, salt, book_key, shop)"
                        + " VALUES (1, :format, 8, 1, 1, :none, :none, :shop)")
                .bind("format", FORMAT)
                .bind("none", new byte[0])
                .bind("shop", keys.shop.value())
                .execute();
        keys.lockWith(handle, passphrase, stretching);
        keys.newCustomer(handle, keys.shop);
        return keys;
    }

    /** Locks the book with another passphrase; the one before opens nothing from now on. */
    void lockWith(Handle handle, Passphrase passphrase, Stretching stretching) {
        byte[] salt = Stretching.newSalt();
        handle.createUpdate("UPDATE book_lock SET memory_kib = :memory, passes = :passes, lanes = :lanes, salt = :salt,"
                        + " book_key = :key WHERE one = 1")
                .bind("memory", stretching.memoryKib())
                .bind("passes", stretching.passes())
                .bind("lanes", stretching.lanes())
                .bind("salt", salt)
                .bind("key", stretching.key(passphrase, salt).wrap(book, BOOK_KEY + " " + shop))
                .execute();
    }

    /** The keys of a book that is there, or {@link Refused}. */
    static Keys open(Handle handle, Passphrase passphrase) {
        return handle.createQuery("SELECT format, memory_kib, passes, lanes, salt, book_key, shop FROM book_lock")
                .map((row, context) -> {
                    if (row.getInt("format") > FORMAT) {
                        throw new Refused(Refusal.NEWER);
                    }
                    Stretching stretching =
                            new Stretching(row.getInt("memory_kib"), row.getInt("passes"), row.getInt("lanes"));
                    CardId shop = new CardId(row.getString("shop"));
                    return stretching
                            .key(passphrase, row.getBytes("salt"))
                            .unwrap(row.getBytes("book_key"), BOOK_KEY + " " + shop)
                            .map(key -> new Keys(key, shop))
                            .orElseThrow(() -> new Refused(Refusal.WRONG_PASSPHRASE));
                })
                .one();
    }

    /** Whose cards those are that belong to no customer. */
    CardId shop() {
        return shop;
    }

    /** A new key for a customer, kept. */
    Key newCustomer(Handle handle, CardId customer) {
        Key fresh = Key.random();
        handle.createUpdate("INSERT INTO customer_key (customer, wrapped) VALUES (:customer, :wrapped)")
                .bind("customer", customer.value())
                .bind("wrapped", wrapping.wrap(fresh, about(customer)))
                .execute();
        return fresh;
    }

    /** The key of a customer; none when the customer was erased or never was. */
    Optional<Key> ofCustomer(Handle handle, CardId customer) {
        return handle.createQuery("SELECT wrapped FROM customer_key WHERE customer = :customer AND wrapped IS NOT NULL")
                .bind("customer", customer.value())
                .mapTo(byte[].class)
                .findOne()
                .map(wrapped -> unwrapped(wrapped, customer));
    }

    /** A customer's key as it stands in its row. */
    Key unwrapped(byte[] wrapped, CardId customer) {
        return wrapping.unwrap(wrapped, about(customer)).orElseThrow(() -> new Refused(Refusal.DAMAGED));
    }

    /** Makes the marks of words. */
    Key words() {
        return words;
    }

    private static String about(CardId customer) {
        return "customer key " + customer;
    }
}
