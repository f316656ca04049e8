package org.loomproof.book.store;

import com.github.kagkarlsson.scheduler.jdbc.DefaultJdbcCustomization;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** How SQLite is asked for tasks: moments are milliseconds since 1970, and a bound on rows is called LIMIT. */
final class SqliteScheduling extends DefaultJdbcCustomization {

    SqliteScheduling() {
        super(false);
    }

    @Override
    public void setInstant(PreparedStatement statement, int index, @Nullable Instant value) throws SQLException {
        if (value == null) {
            statement.setNull(index, Types.BIGINT);
        } else {
            statement.setLong(index, value.toEpochMilli());
        }
    }

    @Override
    public @Nullable Instant getInstant(ResultSet row, String column) throws SQLException {
        long value = row.getLong(column);
        return row.wasNull() ? null : Instant.ofEpochMilli(value);
    }

    @Override
    public String getQueryLimitPart(int limit) {
        return " LIMIT " + limit;
    }

    @Override
    public String getName() {
        return "SQLite";
    }
}
