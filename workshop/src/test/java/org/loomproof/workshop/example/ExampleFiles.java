package org.loomproof.workshop.example;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Where the worked examples lie, and how many there must be. */
final class ExampleFiles {
    /** Asserted, so that none goes missing quietly. */
    static final int NUMBER = 84;

    private ExampleFiles() {}

    /** The folder of all examples, from wherever in the tree the tests run. */
    static Path root() {
        @Nullable Path here = Path.of("").toAbsolutePath();
        while (here != null && !Files.isDirectory(here.resolve("examples"))) {
            here = here.getParent();
        }
        if (here == null) {
            throw new IllegalStateException(
                    "no folder examples above " + Path.of("").toAbsolutePath());
        }
        return here.resolve("examples");
    }

    /** Every folder with a sheet in it, sorted; those that must be refused lie one deeper. */
    static List<Path> list() {
        try (Stream<Path> all = Files.walk(root(), 3)) {
            return all.filter(file -> file.endsWith("sheet.yaml"))
                    .map(file -> file.resolveSibling(""))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String text(Path folder, String file) {
        try {
            return Files.readString(folder.resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
