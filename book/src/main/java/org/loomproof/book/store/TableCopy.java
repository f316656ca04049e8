package org.loomproof.book.store;

import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * All rows of a book from one connection to another, as they stand: sealed. Both kinds of database hold texts, whole numbers and
 * bytes alike, so a copy goes either way. Rows go in the order of their keys, hashed as they pass.
 */
final class TableCopy {

    /** In an order in which a row stands behind those it names. */
    private static final List<Table> TABLES = List.of(
            new Table(
                    "book_lock",
                    "one",
                    List.of("one", "format", "memory_kib", "passes", "lanes", "salt", "book_key", "shop")),
            new Table("customer_key", "customer", List.of("customer", "wrapped", "erased")),
            new Table(
                    "card",
                    "id",
                    List.of("id", "kind", "customer", "version", "stage", "due", "begun", "changed", "headline")),
            new Table("card_event", "card, version", List.of("card", "version", "at", "who", "what", "body")),
            new Table("card_word", "card, mark", List.of("mark", "card")),
            new Table("attachment", "id", List.of("id", "card", "at", "who", "label", "body")));

    private static final int ROWS_AT_ONCE = 50;

    private record Table(String name, String order, List<String> columns) {}

    /**
     * What passed.
     *
     * @param rows how many
     * @param hash SHA-256 over all of them, in hexadecimal
     */
    record Passed(long rows, String hash) {}

    private final MessageDigest digest;
    private final DataOutputStream hashed;
    private long rows;

    private TableCopy() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
        hashed = new DataOutputStream(new DigestOutputStream(OutputStream.nullOutputStream(), digest));
    }

    /** Copies every row. */
    static Passed copy(Connection from, Connection to) throws SQLException {
        return new TableCopy().walk(from, to);
    }

    /** Hashes every row and copies none. */
    static Passed look(Connection at) throws SQLException {
        return new TableCopy().walk(at, null);
    }

    private Passed walk(Connection from, @Nullable Connection to) throws SQLException {
        for (Table table : TABLES) {
            String columns = String.join(", ", table.columns());
            String holes = String.join(", ", Collections.nCopies(table.columns().size(), "?"));
            try (Statement ask = from.createStatement();
                    ResultSet row = rowsOf(
                            ask, "SELECT " + columns + " FROM " + table.name() + " ORDER BY " + order(table, from))) {
                if (to == null) {
                    pass(table, row, null);
                } else {
                    try (PreparedStatement insert = to.prepareStatement(
                            "INSERT INTO " + table.name() + " (" + columns + ") VALUES (" + holes + ")")) {
                        pass(table, row, insert);
                    }
                }
            }
        }
        return new Passed(rows, HexFormat.of().formatHex(digest.digest()));
    }

    /** A server hands rows over in portions only when asked to; photos would fill the memory otherwise. */
    private static ResultSet rowsOf(Statement ask, String query) throws SQLException {
        ask.setFetchSize(ROWS_AT_ONCE);
        return ask.executeQuery(query);
    }

    /** PostgreSQL would order texts by the language of the server; both must order by bytes. */
    private static String order(Table table, Connection from) throws SQLException {
        boolean server = from.getMetaData().getDatabaseProductName().equals("PostgreSQL");
        return server ? table.order().replaceAll("\\b(customer|id|card)\\b", "$1 COLLATE \"C\"") : table.order();
    }

    private void pass(Table table, ResultSet row, @Nullable PreparedStatement insert) throws SQLException {
        int waiting = 0;
        while (row.next()) {
            rows++;
            for (int i = 1; i <= table.columns().size(); i++) {
                Object value = row.getObject(i);
                hash(value);
                if (insert != null) {
                    insert.setObject(i, value);
                }
            }
            if (insert != null) {
                insert.addBatch();
                waiting++;
                if (waiting == ROWS_AT_ONCE) {
                    insert.executeBatch();
                    waiting = 0;
                }
            }
        }
        if (insert != null && waiting > 0) {
            insert.executeBatch();
        }
    }

    /** Each value with its sort, so that no two rows can look alike. */
    private void hash(@Nullable Object value) {
        try {
            switch (value) {
                case null -> hashed.writeByte(0);
                case Number number -> {
                    hashed.writeByte(1);
                    hashed.writeLong(number.longValue());
                }
                case byte[] bytes -> {
                    hashed.writeByte(2);
                    hashed.writeInt(bytes.length);
                    hashed.write(bytes);
                }
                default -> {
                    hashed.writeByte(3);
                    hashed.writeUTF(value.toString());
                }
            }
        } catch (IOException e) {
            throw new IllegalStateException("a hash takes every byte", e);
        }
    }
}
