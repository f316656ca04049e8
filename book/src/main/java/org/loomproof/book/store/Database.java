package org.loomproof.book.store;

import com.github.kagkarlsson.scheduler.jdbc.JdbcCustomization;
import com.github.kagkarlsson.scheduler.jdbc.PostgreSqlJdbcCustomization;
import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.exception.FlywayValidateException;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.loomproof.book.place.BookPlace;
import org.loomproof.book.place.Refusal;
import org.loomproof.book.place.Refused;
import org.postgresql.ds.PGSimpleDataSource;

/** The tables of one book, brought to the newest form when they are opened. The same statements run on both kinds of place. */
public final class Database implements AutoCloseable {

    private static final Set<String> THIS_MACHINE = Set.of("localhost", "127.0.0.1", "::1", "[::1]");

    /** Enough for twenty people at once, since a transaction takes milliseconds; PostgreSQL's usual limit is a hundred. */
    private static final int MOST_CONNECTIONS = 8;

    private static final String MIGRATIONS = "classpath:org/loomproof/book/store/migration/";

    private final HikariDataSource pool;
    private final Jdbi jdbi;
    private final BookPlace place;

    private Database(BookPlace place, HikariDataSource pool) {
        this.place = place;
        this.pool = pool;
        this.jdbi = Jdbi.create(pool);
    }

    /** The tables at a place where a book is. Throws {@link Refused} and changes nothing where there is none of ours. */
    public static Database open(BookPlace place) {
        if (place instanceof BookPlace.InFile(Path file)) {
            BookFile.checkOurs(file);
        }
        return readied(place, true);
    }

    /** New tables at a place where no book is yet. */
    public static Database create(BookPlace place) {
        if (place instanceof BookPlace.InFile(Path file)) {
            if (Files.exists(file)) {
                throw new Refused(Refusal.BOOK_THERE);
            }
            BookFile.makeFolderFor(file);
        }
        return readied(place, false);
    }

    private static Database readied(BookPlace place, boolean there) {
        Database database = connected(place);
        try {
            if (database.hasLock() != there) {
                throw new Refused(there ? Refusal.NO_BOOK : Refusal.BOOK_THERE);
            }
            database.migrate();
            return database;
        } catch (JdbiException e) {
            database.close();
            throw new Refused(Refusal.DAMAGED, e);
        } catch (RuntimeException e) {
            database.close();
            throw e;
        }
    }

    /** Connections and statements. */
    public Jdbi jdbi() {
        return jdbi;
    }

    /** A connection of one's own. */
    Connection connection() throws SQLException {
        return pool.getConnection();
    }

    /** Connections for a library that makes its own statements. */
    DataSource source() {
        return pool;
    }

    /** How that place is asked for background work. */
    JdbcCustomization scheduling() {
        return place instanceof BookPlace.InFile
                ? new SqliteScheduling()
                : new PostgreSqlJdbcCustomization(false, false);
    }

    /** Where it is. */
    public BookPlace place() {
        return place;
    }

    /** Writes what was deleted out of the working files, too. */
    void forget() {
        if (place instanceof BookPlace.InFile) {
            jdbi.useHandle(handle -> handle.createQuery("PRAGMA wal_checkpoint(TRUNCATE)")
                    .mapToMap()
                    .list());
        }
    }

    @Override
    public void close() {
        pool.close();
    }

    private static Database connected(BookPlace place) {
        HikariConfig config = new HikariConfig();
        config.setDataSource(source(place));
        config.setMaximumPoolSize(MOST_CONNECTIONS);
        config.setMinimumIdle(1);
        config.setPoolName("book");
        try {
            return new Database(place, new HikariDataSource(config));
        } catch (RuntimeException e) {
            throw new Refused(Refusal.UNREACHABLE, e);
        }
    }

    private static DataSource source(BookPlace place) {
        return switch (place) {
            case BookPlace.InFile(Path file) -> new SqliteFile(file);
            case BookPlace.OnServer(String url) -> {
                PGSimpleDataSource server = new PGSimpleDataSource();
                server.setUrl(url);
                if (!isWayClosed(server)) {
                    throw new Refused(Refusal.OPEN_WAY);
                }
                yield server;
            }
        };
    }

    /** To another machine only by TLS with a certificate in the server's name: else others could listen, or take its place. */
    private static boolean isWayClosed(PGSimpleDataSource server) {
        return THIS_MACHINE.containsAll(List.of(server.getServerNames())) || "verify-full".equals(server.getSslmode());
    }

    private boolean hasLock() {
        String tables = switch (place) {
            case BookPlace.InFile ignored -> "SELECT COUNT(*) FROM sqlite_master WHERE name = 'book_lock'";
            case BookPlace.OnServer ignored ->
                "SELECT COUNT(*) FROM information_schema.tables WHERE table_schema = current_schema() AND table_name = 'book_lock'";
        };
        return jdbi.withHandle(handle ->
                                handle.createQuery(tables).mapTo(Integer.class).one())
                        > 0
                && jdbi.withHandle(handle -> handle.createQuery("SELECT COUNT(*) FROM book_lock")
                                .mapTo(Integer.class)
                                .one())
                        > 0;
    }

    private void migrate() {
        boolean inFile = place instanceof BookPlace.InFile;
        try {
            Flyway.configure(Database.class.getClassLoader())
                    .dataSource(pool)
                    .locations(MIGRATIONS + "common", MIGRATIONS + (inFile ? "sqlite" : "postgresql"))
                    .failOnMissingLocations(true)
                    .ignoreMigrationPatterns(new String[0])
                    .placeholders(Map.of(
                            "bytes", inFile ? "BLOB" : "BYTEA",
                            "moment", inFile ? "BIGINT" : "TIMESTAMP WITH TIME ZONE"))
                    .load()
                    .migrate();
        } catch (FlywayValidateException e) {
            throw new Refused(Refusal.NEWER, e);
        } catch (FlywayException e) {
            throw new Refused(Refusal.UNREACHABLE, e);
        }
    }
}
