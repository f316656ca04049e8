package org.loomproof.workshop.example;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BinaryOperator;
import org.loomproof.workshop.brief.Brief;

/** An example with some of its texts changed, read anew. */
final class ReworkedExample {

    private ReworkedExample() {}

    /**
     * The brief of an example's three files after a change.
     *
     * @param into where the changed files are written
     * @param change the new text by a file's name and its old text
     */
    static Brief brief(Path example, Path into, BinaryOperator<String> change) {
        try {
            for (String each : List.of("sheet.yaml", "kit.yaml", "order.yaml")) {
                Files.writeString(into.resolve(each), change.apply(each, ExampleFiles.text(example, each)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return ExamplesAreReadTest.brief(into);
    }
}
