package org.loomproof.shop.notes;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Phrase;

/** Writes a file that is not there yet; nothing is ever written over. */
public final class NewFile {

    private NewFile() {}

    /** Writes the text, or says why not. */
    public static Optional<Problem> write(Path file, String text) {
        try {
            Files.writeString(file, text, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of(new Problem(
                    Place.file(file.toString()),
                    ProblemKind.FILE_EXISTS,
                    "",
                    Phrase.of("problem.wanted.new-file"),
                    Phrase.of("problem.hint.new-file")));
        }
    }
}
