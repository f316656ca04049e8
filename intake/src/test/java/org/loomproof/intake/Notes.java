package org.loomproof.intake;

import java.nio.charset.StandardCharsets;
import org.loomproof.intake.check.ReadNotes;
import org.loomproof.intake.decode.Decoder;
import org.loomproof.intake.decode.SourceLines;
import org.loomproof.workshop.problem.Checked;

/** Texts as the tests need them: decoded and read. */
final class Notes {

    private Notes() {}

    static ReadNotes read(String text) {
        return ReadNotes.of(lines("notes.txt", text.getBytes(StandardCharsets.UTF_8)));
    }

    static SourceLines lines(String name, byte[] bytes) {
        return switch (new Decoder().decode(name, bytes)) {
            case Checked.Good<SourceLines>(SourceLines lines) -> lines;
            case Checked.Bad<SourceLines>(var problems) -> throw new AssertionError(problems);
        };
    }
}
