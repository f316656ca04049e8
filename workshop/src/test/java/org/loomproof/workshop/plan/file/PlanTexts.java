package org.loomproof.workshop.plan.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.loomproof.workshop.brief.read.GivenTexts;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.words.Messages;

/** A plan file written by hand over the small valid job, to be changed in one place and read. */
record PlanTexts(String text) {

    static final Messages ENGLISH = Messages.english();

    static PlanTexts byHand() {
        try (InputStream in = Objects.requireNonNull(PlanTexts.class.getResourceAsStream("by-hand.yaml"))) {
            return new PlanTexts(new String(in.readAllBytes(), StandardCharsets.UTF_8) + inputs());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String inputs() {
        GivenTexts given = GivenTexts.valid();
        return "inputs:\n" + input("sheet", given.sheet()) + input("kit", given.kit()) + input("order", given.order());
    }

    private static String input(String noun, String text) {
        return "  " + noun + ":\n    name: " + noun + ".yaml\n    sha256: " + TextSum.of(text) + "\n    text: |\n"
                + text.indent(6);
    }

    PlanTexts with(String before, String after) {
        int at = text.indexOf(before);
        if (at < 0) {
            throw new IllegalArgumentException("the text does not contain: " + before);
        }
        return new PlanTexts(text.substring(0, at) + after + text.substring(at + before.length()));
    }

    static PlanFileReader reader() {
        return new PlanFileReader(GivenTexts.reader(), ENGLISH);
    }

    Checked<PlanFile> read() {
        return reader().read(new SourceText("plan.yaml", text));
    }

    PlanFile good() {
        return switch (read()) {
            case Checked.Good<PlanFile>(PlanFile file) -> file;
            case Checked.Bad<PlanFile>(List<Problem> problems) -> throw new AssertionError(GivenTexts.lines(problems));
        };
    }

    List<String> problems() {
        return switch (read()) {
            case Checked.Good<PlanFile> good -> List.of();
            case Checked.Bad<PlanFile>(List<Problem> problems) -> GivenTexts.lines(problems);
        };
    }
}
