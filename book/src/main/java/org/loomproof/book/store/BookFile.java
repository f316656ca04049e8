package org.loomproof.book.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Set;
import org.loomproof.book.place.Refusal;
import org.loomproof.book.place.Refused;
import org.sqlite.SQLiteConfig;

/** Looks at a file before anything is done with it: whose it is, and whether it is whole. Never writes to it. */
final class BookFile {

    /** Stands in the head of every book's file; set by the migration {@code append_only}. */
    static final int APPLICATION = 0x4C50424B;

    private BookFile() {}

    /** Throws {@link Refused} when the file is missing or not a book of ours. */
    static void checkOurs(Path file) {
        check(file, false);
    }

    /** Throws {@link Refused} when the file is missing, foreign or damaged; reads all of it. */
    static void checkWhole(Path file) {
        check(file, true);
    }

    private static void check(Path file, boolean whole) {
        if (!Files.exists(file)) {
            throw new Refused(Refusal.NO_BOOK);
        }
        if (!Files.isRegularFile(file) || !Files.isReadable(file)) {
            throw new Refused(Refusal.UNREACHABLE);
        }
        if (!looksLikeADatabase(file)) {
            throw new Refused(Refusal.FOREIGN);
        }
        try (Connection connection = readOnly(file);
                Statement ask = connection.createStatement()) {
            if (!answer(ask, "PRAGMA application_id").equals(Integer.toString(APPLICATION))) {
                throw new Refused(Refusal.FOREIGN);
            }
            if (whole
                    && !(answer(ask, "PRAGMA integrity_check(1)").equals("ok")
                            && answer(ask, "PRAGMA foreign_key_check").isEmpty())) {
                throw new Refused(Refusal.DAMAGED);
            }
        } catch (SQLException e) {
            throw new Refused(Refusal.DAMAGED, e);
        }
    }

    /** A connection that sees one moment and cannot change anything. */
    static Connection readOnly(Path file) throws SQLException {
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(true);
        return config.createConnection("jdbc:sqlite:" + file);
    }

    /** Makes the folder for a new book, for its owner's eyes only where the file system knows of owners. */
    static void makeFolderFor(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        try {
            if (folder != null && !Files.exists(folder)) {
                if (knowsOwners()) {
                    Set<PosixFilePermission> owner = PosixFilePermissions.fromString("rwx------");
                    Files.createDirectories(folder, PosixFilePermissions.asFileAttribute(owner));
                } else {
                    Files.createDirectories(folder);
                }
            }
            if (knowsOwners()) {
                Set<PosixFilePermission> owner = PosixFilePermissions.fromString("rw-------");
                Files.createFile(file, PosixFilePermissions.asFileAttribute(owner));
            }
        } catch (IOException e) {
            throw new Refused(Refusal.UNREACHABLE, e);
        }
    }

    private static boolean knowsOwners() {
        return FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
    }

    /** The sixteen bytes with which the SQLite file format begins (sqlite.org, "Database File Format", section 1.3). */
    private static boolean looksLikeADatabase(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return new String(in.readNBytes(16), StandardCharsets.US_ASCII).equals("SQLite format 3\0");
        } catch (IOException e) {
            return false;
        }
    }

    /** The first column of the first row; empty text without one. */
    private static String answer(Statement ask, String pragma) throws SQLException {
        try (ResultSet rows = ask.executeQuery(pragma)) {
            return rows.next() ? String.valueOf(rows.getString(1)) : "";
        }
    }
}
