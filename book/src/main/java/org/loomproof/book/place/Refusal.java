package org.loomproof.book.place;

import java.util.Locale;
import org.loomproof.workshop.words.Phrase;

/** Why a book was not opened, made, backed up or restored. Nothing was changed. */
public enum Refusal {
    /** There is no book at the place. */
    NO_BOOK,
    /** A book is there already. */
    BOOK_THERE,
    /** Too short to lock a book with. */
    PASSPHRASE_TOO_SHORT,
    /** The passphrase or key file is another one. */
    WRONG_PASSPHRASE,
    /** Something else than a book of ours. */
    FOREIGN,
    /** A book of ours, and not whole. */
    DAMAGED,
    /** Made by a later Loomproof. */
    NEWER,
    /** A server elsewhere, to which others on the network could listen or whose place they could take. */
    OPEN_WAY,
    /** A file that cannot be read or written, or a server that does not answer. */
    UNREACHABLE;

    /** The sentence about a place. */
    public Phrase at(String place) {
        return Phrase.of("book.refused." + word(), place);
    }

    /** As it stands in the message files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
