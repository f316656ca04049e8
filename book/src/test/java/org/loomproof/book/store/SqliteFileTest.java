package org.loomproof.book.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.book.place.BookPlace;
import org.sqlite.SQLiteConfig;

class SqliteFileTest {

    @TempDir
    private Path folder;

    @Test
    void everyConnectionOfAnOpenBookWritesAheadAndWaitsForTheDisk() throws SQLException {
        try (Database database = Database.create(new BookPlace.InFile(folder.resolve("a.book")))) {
            List<Connection> held = new ArrayList<>();
            for (int i = 0; i < 8; i++) { // as many as there are
                held.add(database.connection());
            }
            for (Connection one : held) {
                assertThat(answer(one, "PRAGMA journal_mode")).isEqualTo("wal");
                assertThat(answer(one, "PRAGMA synchronous")).as("2 is FULL").isEqualTo("2");
                assertThat(answer(one, "PRAGMA foreign_keys")).isEqualTo("1");
                assertThat(answer(one, "PRAGMA secure_delete")).isEqualTo("1");
                one.close();
            }
        }
    }

    @Test
    void aConnectionThatWouldNotWaitForTheDiskIsNotHandedOut() {
        SQLiteConfig hasty = SqliteFile.settings();
        hasty.setSynchronous(SQLiteConfig.SynchronousMode.NORMAL);
        assertThatThrownBy(() -> new SqliteFile(folder.resolve("b.book"), hasty).getConnection())
                .hasMessageContaining("not be safe");
    }

    @Test
    void aConnectionThatWouldNotWriteAheadIsNotHandedOut() {
        SQLiteConfig old = SqliteFile.settings();
        old.setJournalMode(SQLiteConfig.JournalMode.MEMORY);
        assertThatThrownBy(() -> new SqliteFile(folder.resolve("c.book"), old).getConnection())
                .hasMessageContaining("not be safe");
    }

    private static String answer(Connection connection, String pragma) throws SQLException {
        try (ResultSet row = connection.createStatement().executeQuery(pragma)) {
            return row.getString(1);
        }
    }
}
