package org.loomproof.book;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import java.util.stream.Stream;
import org.loomproof.book.place.BookPlace;

/** The same book on PostgreSQL. */
class PostgresBookTest extends BookContract {

    @Override
    BookPlace freshPlace() {
        return BookPlace.of(TestServer.get().newDatabase());
    }

    @Override
    List<Path> filesOnDisk(BookPlace at) {
        TestServer.get().settle();
        try (Stream<Path> all = Files.walk(TestServer.get().files())) {
            return all.filter(Files::isRegularFile).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    void tamper(String sql) {
        try (Connection past = DriverManager.getConnection(((BookPlace.OnServer) place()).url())) {
            past.createStatement().executeUpdate(sql);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }
}
