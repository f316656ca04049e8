package org.loomproof.book.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.loomproof.book.place.BookPlace;
import org.loomproof.book.place.Refusal;
import org.loomproof.book.place.Refused;

/**
 * A backup is a book in a file, made at one moment while others go on writing, with a hash of all its rows. So one kind of file
 * serves both kinds of place, and a shop moves from the one to the other by it.
 */
public final class Backup {

    private Backup() {}

    /** Writes a backup into a new file, whole or not at all. Throws {@link Refused}. */
    public static long write(BookPlace place, Path into) {
        if (Files.exists(into)) {
            throw new Refused(Refusal.BOOK_THERE);
        }
        try (Database source = Database.open(place);
                Connection from = oneMoment(source)) {
            return inNewFile(into, to -> {
                TableCopy.Passed passed = TableCopy.copy(from, to);
                try (PreparedStatement seal =
                        to.prepareStatement("INSERT INTO backup_seal (one, counted, hash) VALUES (1, ?, ?)")) {
                    seal.setLong(1, passed.rows());
                    seal.setString(2, passed.hash());
                    seal.executeUpdate();
                }
                return passed;
            });
        } catch (SQLException e) {
            throw new Refused(Refusal.DAMAGED, e);
        }
    }

    /** Reads a whole backup and compares it with its hash. Throws {@link Refused}. */
    public static long check(Path backup) {
        BookFile.checkWhole(backup);
        try (Connection from = BookFile.readOnly(backup)) {
            TableCopy.Passed found = TableCopy.look(from);
            compare(from, found);
            return found.rows();
        } catch (SQLException e) {
            throw new Refused(Refusal.DAMAGED, e);
        }
    }

    /** Puts a backup where no book is, whole or not at all. Throws {@link Refused}. */
    public static long restore(Path backup, BookPlace place) {
        BookFile.checkWhole(backup);
        try (Connection from = BookFile.readOnly(backup)) {
            Work work = to -> {
                TableCopy.Passed passed = TableCopy.copy(from, to);
                compare(from, passed);
                return passed;
            };
            return switch (place) {
                case BookPlace.InFile(Path file) -> inNewFile(file, work);
                case BookPlace.OnServer server -> {
                    try (Database target = Database.create(server)) {
                        yield inOneTransaction(target, work);
                    }
                }
            };
        } catch (SQLException e) {
            throw new Refused(Refusal.DAMAGED, e);
        }
    }

    private interface Work {
        TableCopy.Passed into(Connection to) throws SQLException;
    }

    private static long inNewFile(Path file, Work work) {
        if (Files.exists(file)) {
            throw new Refused(Refusal.BOOK_THERE);
        }
        Path fresh = file.resolveSibling(
                "." + file.getFileName() + "-" + ProcessHandle.current().pid() + "-" + System.nanoTime());
        try {
            long rows;
            try (Database target = Database.create(new BookPlace.InFile(fresh))) {
                rows = inOneTransaction(target, work);
                target.forget();
            }
            BookFile.checkWhole(fresh);
            Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE);
            return rows;
        } catch (IOException | SQLException e) {
            throw new Refused(Refusal.UNREACHABLE, e);
        } finally {
            for (String tail : new String[] {"", "-wal", "-shm"}) {
                deleteIfThere(fresh.resolveSibling(fresh.getFileName() + tail));
            }
        }
    }

    private static long inOneTransaction(Database target, Work work) throws SQLException {
        return target.jdbi()
                .inTransaction(handle -> work.into(handle.getConnection()))
                .rows();
    }

    /** One moment of the book, while others go on writing. */
    private static Connection oneMoment(Database source) throws SQLException {
        Connection connection = switch (source.place()) {
            case BookPlace.InFile(Path file) -> BookFile.readOnly(file);
            case BookPlace.OnServer ignored -> {
                Connection server = source.connection();
                server.setTransactionIsolation(Connection.TRANSACTION_REPEATABLE_READ);
                server.setReadOnly(true);
                yield server;
            }
        };
        connection.setAutoCommit(false);
        return connection;
    }

    private static void compare(Connection from, TableCopy.Passed found) throws SQLException {
        try (Statement ask = from.createStatement();
                ResultSet seal = ask.executeQuery("SELECT counted, hash FROM backup_seal")) {
            if (!seal.next()
                    || seal.getLong("counted") != found.rows()
                    || !found.hash().equals(seal.getString("hash"))) {
                throw new Refused(Refusal.DAMAGED);
            }
        }
    }

    private static void deleteIfThere(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            // Rubbish of ours beside the backup: a pity, and no reason to call the work a failure.
        }
    }
}
