package org.loomproof.workshop.brief.path;

import java.util.Optional;
import org.loomproof.workshop.brief.Basis;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.text.Cursor;
import org.loomproof.workshop.brief.text.FigureReader;
import org.loomproof.workshop.brief.text.MappingCursor;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.quantity.Unit;
import org.loomproof.workshop.trade.wire.Conductors;
import org.loomproof.workshop.words.Phrase;

/** The resistance of a length of factory wire: as measured, or from its length and size at 20 °C. */
final class WireResistance {

    private WireResistance() {}

    static Figure<Ohms> read(MappingCursor in, FigureReader figures) {
        Optional<Cursor> length = in.find("length");
        Optional<Cursor> size = in.find("size");
        Optional<Cursor> resistance = in.find("resistance");
        if (resistance.isPresent() && (length.isPresent() || size.isPresent())) {
            resistance.get().problem(ProblemKind.CONTRADICTION, Phrase.of("problem.wanted.length-or-resistance"));
        }
        if (resistance.isPresent()) {
            return figures.need(in, "resistance", Unit.OHMS);
        }
        Figure<Metres> run = figures.orUsual(in, "length", Unit.METRES, "wire.length");
        Figure<SquareMillimetres> area = figures.orUsual(in, "size", Unit.SQUARE_MILLIMETRES, "wire.size");
        Basis basis = run.basis().certainty().compareTo(area.basis().certainty()) >= 0 ? run.basis() : area.basis();
        Ohms typical = ohms(run.typical(), area.typical());
        // Published limits fall in steps, so that a size in between may resist more than a thinner one that is listed.
        Ohms low = ohms(run.low(), area.high());
        Ohms high = ohms(run.high(), area.low());
        return new Figure<>(
                new Ohms(Math.min(low.value(), typical.value())),
                typical,
                new Ohms(Math.max(high.value(), typical.value())),
                basis);
    }

    private static Ohms ohms(Metres run, SquareMillimetres area) {
        return new Ohms(Conductors.ohmsPerMetre(area) * run.value());
    }
}
