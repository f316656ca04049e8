package org.loomproof.book.place;

import java.nio.file.Path;

/** Where a book lies. */
public sealed interface BookPlace {

    /** What every address of a database server begins with. */
    String SERVER = "jdbc:postgresql:";

    /** One file of its own, beside two working files while it is open. */
    record InFile(Path file) implements BookPlace {
        @Override
        public String toString() {
            return file.toString();
        }
    }

    /**
     * A PostgreSQL database of a shop with many bays.
     *
     * @param url {@code jdbc:postgresql://HOST/DATABASE?user=...&password=...}; never printed whole, since it may hold a password
     */
    record OnServer(String url) implements BookPlace {
        @Override
        public String toString() {
            int question = url.indexOf('?');
            return question < 0 ? url : url.substring(0, question);
        }
    }

    /** The place a text names: an address of a server, or else a file. */
    static BookPlace of(String text) {
        return text.startsWith(SERVER) ? new OnServer(text) : new InFile(Path.of(text));
    }
}
