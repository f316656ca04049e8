package org.loomproof.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.book.key.Passphrase;
import org.loomproof.book.place.BookPlace;
import org.loomproof.book.place.Refusal;
import org.loomproof.book.place.Tried;
import org.loomproof.book.store.OpenBook;

/**
 * A book on another machine is opened only where nobody can listen on the way, or take the server's place (sslmode, PostgreSQL 17
 * documentation, section 32.19.1, from memory). No such server is there: a name under .invalid leads nowhere (RFC 2606).
 */
class ServerWayTest {

    @ParameterizedTest
    @CsvSource({
        "//books.invalid/book, OPEN_WAY",
        "//books.invalid/book?user=bo&sslmode=require, OPEN_WAY",
        "//books.invalid/book?sslmode=verify-ca, OPEN_WAY",
        "'//localhost,books.invalid/book', OPEN_WAY",
        "//books.invalid/book?sslmode=verify-full, UNREACHABLE",
        "//localhost:1/book, UNREACHABLE",
        "//127.0.0.1:1/book?sslmode=disable, UNREACHABLE"
    })
    void aServerElsewhereMustProveWhoItIs(String address, Refusal expected) {
        BookPlace place = BookPlace.of("jdbc:postgresql:" + address);
        Tried<OpenBook> tried = Book.open(place, Passphrase.of("four brass kettles sing"), Clock.systemUTC());
        assertThat(tried).isEqualTo(new Tried.Not<OpenBook>(expected));
    }
}
