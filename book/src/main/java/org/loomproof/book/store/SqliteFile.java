package org.loomproof.book.store;

import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConnection;
import org.sqlite.SQLiteDataSource;

/**
 * A file in which an answered write is on the disk: write-ahead log, and every commit waits for the disk. Asked of SQLite again
 * on each connection, since a file system or a stray option may say otherwise; a connection without both is never handed out.
 */
final class SqliteFile extends SQLiteDataSource {

    /** What {@code PRAGMA synchronous} answers for FULL. */
    private static final int FULL = 2;

    /** How long a writer waits for another before it gives up, in milliseconds: much longer than any transaction of ours. */
    private static final int PATIENCE_MILLIS = 30_000;

    SqliteFile(Path file) {
        this(file, settings());
    }

    /** For a test that asks for less than is needed. */
    SqliteFile(Path file, SQLiteConfig settings) {
        super(settings);
        setUrl("jdbc:sqlite:" + file);
    }

    static SQLiteConfig settings() {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setBusyTimeout(PATIENCE_MILLIS);
        config.enforceForeignKeys(true);
        // A writer takes its turn at the beginning; two that read first and then both want to write would block each
        // other.
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        // What is deleted is overwritten: an erased key does not linger in a free page.
        config.setPragma(SQLiteConfig.Pragma.SECURE_DELETE, "true");
        return config;
    }

    @Override
    public SQLiteConnection getConnection(@Nullable String user, @Nullable String password) throws SQLException {
        SQLiteConnection connection = super.getConnection(user, password);
        try (Statement ask = connection.createStatement()) {
            String journal = answer(ask, "PRAGMA journal_mode");
            String synchronous = answer(ask, "PRAGMA synchronous");
            if (!journal.equals("wal") || Integer.parseInt(synchronous) < FULL) {
                throw new SQLException(
                        "writes would not be safe: journal %s, synchronous %s".formatted(journal, synchronous));
            }
            return connection;
        } catch (SQLException | RuntimeException e) {
            connection.close();
            throw e;
        }
    }

    private static String answer(Statement ask, String pragma) throws SQLException {
        try (ResultSet row = ask.executeQuery(pragma)) {
            return row.getString(1);
        }
    }
}
