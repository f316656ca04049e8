package org.loomproof.pages;

import java.nio.file.Path;
import java.util.Optional;
import org.loomproof.book.place.BookPlace;
import picocli.CommandLine.Option;

/** Where the book is: said, else in the environment, else in the person's own folder for data. */
final class BookOption {

    @Option(names = "--book", paramLabel = "PLACE", descriptionKey = "book")
    private Optional<String> book;

    @SuppressWarnings("NullAway.Init") // picocli fills the field before it calls the command
    BookOption() {}

    BookPlace place() {
        return BookPlace.of(book.or(() -> Optional.ofNullable(System.getenv("LOOMPROOF_DB")))
                .orElseGet(() -> usual().toString()));
    }

    /** Beside the book, or where one would be kept: what belongs to this server alone. */
    Path folder() {
        return place() instanceof BookPlace.InFile(Path file)
                ? file.toAbsolutePath().resolveSibling("")
                : usual().resolveSibling("");
    }

    /** The XDG Base Directory Specification's folder for data. */
    private static Path usual() {
        return Optional.ofNullable(System.getenv("XDG_DATA_HOME"))
                .map(Path::of)
                .orElseGet(() -> Path.of(System.getProperty("user.home"), ".local", "share"))
                .resolve("loomproof")
                .resolve("jobs.book");
    }
}
