package org.loomproof.workshop.brief.read;

import java.util.Optional;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.brief.text.Cursor;
import org.loomproof.workshop.brief.text.FigureReader;
import org.loomproof.workshop.brief.text.MappingCursor;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Range;
import org.loomproof.workshop.quantity.Unit;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.inrush.Inrush;
import org.loomproof.workshop.words.Phrase;

/** Reads {@code port}: what a lead is electrically. */
final class PortReader {

    /** What a port may be; the word decides which figures it has. */
    private enum Kind {
        SUPPLY,
        GROUND,
        INPUT,
        LOW_SIDE,
        HIGH_SIDE,
        TO_EXTRA
    }

    private final FigureReader figures;

    PortReader(FigureReader figures) {
        this.figures = figures;
    }

    /** @param role what the lead is for; what is usual of its port may follow from it */
    Port read(MappingCursor in, LeadRole role) {
        Optional<Cursor> said = in.need("kind");
        Optional<Kind> kind = said.flatMap(at -> at.word(Words.all(Kind.class)));
        if (kind.isEmpty()) {
            // Which keys it may have is not known without its kind.
            return new Port.Ground();
        }
        Port port = switch (kind.get()) {
            case SUPPLY -> new Port.Supply();
            case GROUND -> new Port.Ground();
            case INPUT -> input(in);
            case LOW_SIDE -> lowSide(in, role);
            case HIGH_SIDE -> highSide(in, role);
            case TO_EXTRA -> new Port.ToExtra(in.text("extra"));
        };
        in.close();
        return port;
    }

    /** True where a kind of port stands. */
    static boolean isKind(Cursor at) {
        return Words.all(Kind.class).containsKey(at.found());
    }

    private Port input(MappingCursor in) {
        Figure<Volts> lowBelow = figures.orUsual(in, "low-below", Unit.VOLTS, "port.input.low-below");
        Figure<Volts> highAbove = figures.orUsual(in, "high-above", Unit.VOLTS, "port.input.high-above");
        if (lowBelow.low().value() > highAbove.high().value()) {
            in.problem(
                    ProblemKind.CONTRADICTION,
                    lowBelow.typical() + ", " + highAbove.typical(),
                    Phrase.of("problem.wanted.low-under-high"),
                    Phrase.of("problem.hint.none"));
        }
        return new Port.Input(
                in.word("active", Port.Active.class),
                lowBelow,
                highAbove,
                figures.find(in, "pull-up", Unit.OHMS),
                figures.find(in, "pull-down", Unit.OHMS),
                in.yesNoOr("clamps", true),
                figures.find(in, "reads-after", Unit.SECONDS));
    }

    private Port lowSide(MappingCursor in, LeadRole role) {
        Figure<Amps> rating = figures.need(in, "rating", Unit.AMPS);
        return new Port.LowSide(
                rating,
                figures.orUsual(in, "saturation", Unit.VOLTS, "port.low-side.saturation"),
                figures.find(in, "pulse", Unit.SECONDS),
                in.yesNoOr("body-diode", true),
                in.yesNoOr("clamp", false),
                figures.find(in, "bears", Unit.VOLTS),
                figures.find(in, "pause", Unit.SECONDS),
                rush(in, role, rating));
    }

    private Port highSide(MappingCursor in, LeadRole role) {
        Figure<Amps> rating = figures.need(in, "rating", Unit.AMPS);
        return new Port.HighSide(
                rating,
                figures.orUsual(in, "saturation", Unit.VOLTS, "port.high-side.saturation"),
                figures.find(in, "pulse", Unit.SECONDS),
                in.yesNoOr("body-diode", true),
                figures.find(in, "pause", Unit.SECONDS),
                rush(in, role, rating));
    }

    /** What an output carries at first: said, or of one that is there for lamps what is usual of such. */
    private Optional<Figure<Amps>> rush(MappingCursor in, LeadRole role, Figure<Amps> rating) {
        return role.isForLamps()
                ? Optional.of(figures.orUsual(in, "rush", Unit.AMPS, usualRush(rating)))
                : figures.find(in, "rush", Unit.AMPS);
    }

    private static Range<Amps> usualRush(Figure<Amps> rating) {
        return new Range<>(
                Inrush.OUTPUT_FOR_LAMPS.most(rating.low()),
                Inrush.OUTPUT_FOR_LAMPS.most(rating.typical()),
                Inrush.OUTPUT_FOR_LAMPS.most(rating.high()));
    }
}
