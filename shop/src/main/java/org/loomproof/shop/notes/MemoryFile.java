package org.loomproof.shop.notes;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import org.loomproof.intake.correct.ShopMemory;
import org.loomproof.workshop.brief.text.CsvLines;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.words.Phrase;

/** The file that a shop keeps its corrections in: the one file that is written anew when something was added. */
public final class MemoryFile {

    private MemoryFile() {}

    /**
     * What the file holds, or every problem in it.
     *
     * @param mayBegin whether a file that is not there yet is an empty memory
     */
    public static Checked<ShopMemory> read(Path file, boolean mayBegin) {
        return mayBegin && Files.notExists(file)
                ? new Checked.Good<>(ShopMemory.empty())
                : CsvLines.read(file, ShopMemory::read);
    }

    /** Puts the memory in the place of what was there, whole or not at all; or says why not. */
    public static List<Problem> write(Path file, ShopMemory memory) {
        Path whole = file.toAbsolutePath();
        Path beside = whole.resolveSibling(whole.getFileName() + ".new");
        try {
            Files.writeString(beside, memory.write(), StandardCharsets.UTF_8);
            Files.move(beside, whole, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            return List.of();
        } catch (IOException e) {
            return List.of(new Problem(
                    Place.file(file.toString()),
                    ProblemKind.FILE_NOT_FOUND,
                    "",
                    Phrase.of("problem.wanted.writable"),
                    Phrase.of("problem.hint.none")));
        }
    }
}
