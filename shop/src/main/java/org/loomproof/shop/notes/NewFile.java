package org.loomproof.shop.notes;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Phrase;

/** Writes files that are not there yet; nothing is ever written over. */
public final class NewFile {

    private NewFile() {}

    /** Writes all the texts, or none and says why not. */
    public static List<Problem> write(Map<Path, String> texts) {
        List<Path> written = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        texts.forEach((file, text) -> {
            try {
                Files.writeString(file, text, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
                written.add(file);
            } catch (IOException e) {
                problems.add(new Problem(
                        Place.file(file.toString()),
                        ProblemKind.FILE_EXISTS,
                        "",
                        Phrase.of("problem.wanted.new-file"),
                        Phrase.of("problem.hint.new-file")));
            }
        });
        if (!problems.isEmpty()) {
            written.forEach(NewFile::takeBack);
        }
        return problems;
    }

    private static void takeBack(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            throw new UncheckedIOException("a file just written cannot be taken back: " + file, e);
        }
    }
}
