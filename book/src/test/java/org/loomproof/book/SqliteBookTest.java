package org.loomproof.book;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.loomproof.book.place.BookPlace;

/** The book in one file. */
class SqliteBookTest extends BookContract {

    @Override
    BookPlace freshPlace() {
        return new BookPlace.InFile(folder.resolve("shelf").resolve(UUID.randomUUID() + ".book"));
    }

    @Override
    List<Path> filesOnDisk(BookPlace at) {
        try (Stream<Path> all = Files.list(folder.resolve("shelf"))) {
            return all.toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    void tamper(String sql) {
        try (Connection past = DriverManager.getConnection("jdbc:sqlite:" + place())) {
            past.createStatement().executeUpdate(sql);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }
}
