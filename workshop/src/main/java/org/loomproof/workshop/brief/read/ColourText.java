package org.loomproof.workshop.brief.read;

import java.util.Optional;
import org.loomproof.workshop.brief.text.Cursor;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.trade.colour.ColourReader;
import org.loomproof.workshop.trade.colour.WireColour;
import org.loomproof.workshop.words.Phrase;

/** Reads a wire's colour in any spelling the trade knows. */
final class ColourText {

    private ColourText() {}

    static Optional<WireColour> read(Cursor at) {
        if (!at.isText()) {
            at.problem(ProblemKind.WRONG_SHAPE, Phrase.of("problem.wanted.colour"));
            return Optional.empty();
        }
        Optional<WireColour> colour = ColourReader.read(at.text());
        if (colour.isEmpty()) {
            at.problem(ProblemKind.NOT_A_COLOUR, Phrase.of("problem.wanted.colour"), Phrase.of("problem.hint.colour"));
        }
        return colour;
    }
}
