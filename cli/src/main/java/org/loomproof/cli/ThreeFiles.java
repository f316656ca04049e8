package org.loomproof.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** The three files of a brief, as options. */
final class ThreeFiles {

    @Option(names = "--sheet", required = true, paramLabel = "FILE", descriptionKey = "sheet")
    private Path sheet;

    @Option(names = "--kit", required = true, paramLabel = "FILE", descriptionKey = "kit")
    private Path kit;

    @Option(names = "--order", required = true, paramLabel = "FILE", descriptionKey = "order")
    private Path order;

    @SuppressWarnings("NullAway.Init") // picocli fills the fields before a command runs
    private ThreeFiles() {}

    Path sheet() {
        return sheet;
    }

    Path kit() {
        return kit;
    }

    Path order() {
        return order;
    }
}
