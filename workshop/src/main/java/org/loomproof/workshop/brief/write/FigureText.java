package org.loomproof.workshop.brief.write;

import java.util.Optional;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.quantity.QuantityWriter;

/**
 * Writes figures inside an entry of a given certainty: a figure that is less or more sure than its entry says so itself.
 *
 * @param certainty how sure the entry is
 */
record FigureText(Certainty certainty) {

    String of(Figure<?> figure) {
        String range = QuantityWriter.write(figure.low(), figure.typical(), figure.high());
        Certainty own = figure.basis().certainty();
        return own == certainty ? range : range + " " + Words.of(own);
    }

    /** The figure, or nothing when it is not said. */
    String of(Optional<? extends Figure<?>> figure) {
        return figure.map(this::of).orElse("");
    }
}
