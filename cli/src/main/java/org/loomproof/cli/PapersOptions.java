package org.loomproof.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.loomproof.papers.pdf.Sheet;
import org.loomproof.shop.job.PapersWanted;
import org.loomproof.shop.job.ShopFiles;
import picocli.CommandLine.Option;

/** Where the papers go and what they take from the shop, as options. */
final class PapersOptions {

    @Option(names = "--out", required = true, paramLabel = "DIR", descriptionKey = "out")
    private Path out;

    @Option(names = "--prices", paramLabel = "FILE", descriptionKey = "prices")
    private @Nullable Path prices;

    @Option(names = "--history", paramLabel = "FILE", descriptionKey = "history")
    private @Nullable Path history;

    @Option(names = "--stock", paramLabel = "FILE", descriptionKey = "stock")
    private @Nullable Path stock;

    @Option(names = "--address", paramLabel = "URL", descriptionKey = "address")
    private @Nullable String address;

    @Option(names = "--photos", paramLabel = "PATH", arity = "1..*", descriptionKey = "photos")
    private List<Path> photos = List.of();

    @Option(names = "--language", paramLabel = "CODE", descriptionKey = "language")
    private @Nullable String language;

    @Option(names = "--print", paramLabel = "SHEET", descriptionKey = "print")
    private @Nullable Sheet print;

    @SuppressWarnings("NullAway.Init") // picocli fills the fields before a command runs
    private PapersOptions() {}

    PapersWanted wanted() {
        ShopFiles shop = new ShopFiles(
                Optional.ofNullable(prices),
                Optional.ofNullable(history),
                Optional.ofNullable(stock),
                Optional.ofNullable(address),
                photos,
                Optional.ofNullable(language));
        return new PapersWanted(out, shop, Optional.ofNullable(print));
    }
}
