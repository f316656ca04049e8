package org.loomproof.pages.desk;

import java.nio.file.Path;
import java.time.Clock;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.book.Book;
import org.loomproof.book.key.Passphrase;
import org.loomproof.book.key.Stretching;
import org.loomproof.book.place.BookPlace;
import org.loomproof.book.store.OpenBook;

/** Tests that have a fresh book each. */
abstract class InBook {

    @TempDir
    private Path folder;

    private @Nullable OpenBook opened;

    @BeforeEach
    void open() {
        opened = Book.create(
                        new BookPlace.InFile(folder.resolve("jobs.book")),
                        Passphrase.of("four brass kettles sing"),
                        new Stretching(64, 1, 1),
                        Clock.systemUTC())
                .orThrow();
    }

    @AfterEach
    void close() {
        book().close();
    }

    OpenBook book() {
        if (opened == null) {
            throw new IllegalStateException("there is no book yet");
        }
        return opened;
    }
}
