package org.loomproof.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.loomproof.papers.pdf.Sheet;
import org.loomproof.shop.job.PapersWanted;
import picocli.CommandLine.Option;

/** Where the papers go and by whose prices, as options. */
final class PapersOptions {

    @Option(names = "--out", required = true, paramLabel = "DIR", descriptionKey = "out")
    private Path out;

    @Option(names = "--prices", paramLabel = "FILE", descriptionKey = "prices")
    private @Nullable Path prices;

    @Option(names = "--print", paramLabel = "SHEET", descriptionKey = "print")
    private @Nullable Sheet print;

    @SuppressWarnings("NullAway.Init") // picocli fills the fields before a command runs
    private PapersOptions() {}

    PapersWanted wanted() {
        return new PapersWanted(out, Optional.ofNullable(prices), Optional.ofNullable(print));
    }
}
