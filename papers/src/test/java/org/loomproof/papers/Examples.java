package org.loomproof.papers;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.complete.SheetCompletion;
import org.loomproof.workshop.brief.read.BriefReader;
import org.loomproof.workshop.brief.read.ReadBrief;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.trade.template.TradeDefaults;

/** The worked examples. */
public final class Examples {

    /** Where they are. */
    public static final Path FOLDER = Path.of("..", "examples");

    private Examples() {}

    /** The folders of all of them, sorted. */
    public static List<Path> all() {
        try (Stream<Path> files = Files.walk(FOLDER)) {
            return files.filter(file -> file.endsWith("sheet.yaml"))
                    .map(file -> Objects.requireNonNull(file.getParent()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What one of them gives, completed. */
    public static Brief brief(Path example) {
        TradeDefaults usual = TradeDefaults.read();
        BriefReader reader = new BriefReader(usual, new SheetCompletion(usual));
        Path sheet = example.resolve("sheet.yaml");
        return switch (reader.read(sheet, example.resolve("kit.yaml"), example.resolve("order.yaml"))) {
            case Checked.Good<ReadBrief> good -> good.value().brief();
            case Checked.Bad<ReadBrief> bad ->
                throw new AssertionError(bad.problems().toString());
        };
    }
}
