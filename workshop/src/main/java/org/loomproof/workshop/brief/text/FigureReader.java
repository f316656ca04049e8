package org.loomproof.workshop.brief.text;

import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.loomproof.workshop.brief.Basis;
import org.loomproof.workshop.brief.Certainty;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.problem.Place;
import org.loomproof.workshop.problem.ProblemKind;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Quantity;
import org.loomproof.workshop.quantity.QuantityText;
import org.loomproof.workshop.quantity.QuantityText.Outcome;
import org.loomproof.workshop.quantity.Range;
import org.loomproof.workshop.quantity.Unit;
import org.loomproof.workshop.trade.template.PartDefaults;
import org.loomproof.workshop.words.Phrase;

/**
 * Reads figures. A figure is as sure as the entry it stands in, unless a word behind it says otherwise
 * ({@code 0.3 ohm verified}); a figure that is not said is the trade's usual range, marked assumed.
 */
public final class FigureReader {

    private static final Map<String, Certainty> CERTAINTIES = Words.all(Certainty.class);

    private final PartDefaults usual;
    private final Certainty certainty;
    private final UnaryOperator<Place> placing;

    private FigureReader(PartDefaults usual, Certainty certainty, UnaryOperator<Place> placing) {
        this.usual = usual;
        this.certainty = certainty;
        this.placing = placing;
    }

    /** Reads figures that are as sure as given, with the usual ranges for those left out. */
    public static FigureReader of(PartDefaults usual, Certainty certainty) {
        return new FigureReader(usual, certainty, UnaryOperator.identity());
    }

    /** Reads figures of a text of our own that stands in for what the entry at that place does not say: all are assumed. */
    public static FigureReader standingInFor(Place entry, PartDefaults usual) {
        return new FigureReader(
                usual,
                Certainty.ASSUMED,
                own -> new Place(entry.file(), entry.line(), entry.column(), entry.path() + "." + own.path()));
    }

    /** A reader of the same kind that takes figures to be this sure. */
    public FigureReader assured(Certainty sure) {
        return new FigureReader(usual, certainty == Certainty.ASSUMED ? certainty : sure, placing);
    }

    /** What the mapping's own statements rest on. */
    public Basis basis(Place at) {
        return new Basis(certainty, placing.apply(at));
    }

    /** A figure that must be said. */
    public <Q extends Quantity> Figure<Q> need(MappingCursor in, String key, Unit<Q> unit) {
        Optional<Cursor> found = in.find(key);
        if (found.isEmpty()) {
            in.missing(key, wanted(unit));
        }
        return found.flatMap(cursor -> of(cursor, unit)).orElseGet(() -> standIn(in.place(), unit));
    }

    /** A figure, if it is said. */
    public <Q extends Quantity> Optional<Figure<Q>> find(MappingCursor in, String key, Unit<Q> unit) {
        return in.find(key).flatMap(cursor -> of(cursor, unit));
    }

    /** A figure, or the usual range under that key; a problem is noted when there is none. */
    public <Q extends Quantity> Figure<Q> orUsual(MappingCursor in, String key, Unit<Q> unit, String usualKey) {
        return orUsual(in, key, unit, usual.find(usualKey, unit.type()));
    }

    /** What is said, or what is usual of this one. */
    public <Q extends Quantity> Figure<Q> orUsual(MappingCursor in, String key, Unit<Q> unit, Range<Q> range) {
        return orUsual(in, key, unit, Optional.of(range));
    }

    /** The resistance of a fuse; when it is not said, the usual one for its rating. */
    public Figure<Ohms> fuseResistance(MappingCursor in, String key, Figure<Amps> rating) {
        Range<Amps> range = new Range<>(rating.low(), rating.typical(), rating.high());
        return orUsual(in, key, Unit.OHMS, usual.findFuseResistance(range));
    }

    private <Q extends Quantity> Figure<Q> orUsual(
            MappingCursor in, String key, Unit<Q> unit, Optional<Range<Q>> range) {
        Optional<Cursor> said = in.find(key);
        if (said.isPresent()) {
            return of(said.get(), unit).orElseGet(() -> standIn(in.place(), unit));
        }
        if (range.isEmpty()) {
            in.missing(key, wanted(unit));
            return standIn(in.place(), unit);
        }
        Range<Q> found = range.get();
        Basis basis = new Basis(Certainty.ASSUMED, placing.apply(in.placeOf(key)));
        return new Figure<>(found.low(), found.typical(), found.high(), basis);
    }

    /** A single value that must be said. */
    public <Q extends Quantity> Q value(MappingCursor in, String key, Unit<Q> unit) {
        Optional<Cursor> found = in.find(key);
        if (found.isEmpty()) {
            in.missing(key, wanted(unit));
        }
        return found.flatMap(cursor -> valueOf(cursor, unit)).orElse(unit.least());
    }

    /** A single value, if it is said. */
    public <Q extends Quantity> Optional<Q> findValue(MappingCursor in, String key, Unit<Q> unit) {
        return in.find(key).flatMap(cursor -> valueOf(cursor, unit));
    }

    private <Q extends Quantity> Optional<Q> valueOf(Cursor cursor, Unit<Q> unit) {
        Optional<Figure<Q>> figure = of(cursor, unit);
        if (figure.isPresent() && figure.get().isRange()) {
            cursor.problem(ProblemKind.WRONG_SHAPE, Phrase.of("problem.wanted.single", example(unit)));
        }
        return figure.map(Figure::typical);
    }

    /** The figure at the cursor; empty, with a problem noted, when it cannot be read. */
    public <Q extends Quantity> Optional<Figure<Q>> of(Cursor cursor, Unit<Q> unit) {
        if (!cursor.isText()) {
            cursor.problem(ProblemKind.WRONG_SHAPE, wanted(unit));
            return Optional.empty();
        }
        String text = cursor.text();
        int lastSpace = text.lastIndexOf(' ');
        Certainty said = CERTAINTIES.get(text.substring(lastSpace + 1));
        String quantity = said == null ? text : text.substring(0, Math.max(0, lastSpace));
        Basis basis = new Basis(said == null ? certainty : said, placing.apply(cursor.place()));
        return switch (QuantityText.read(quantity, unit)) {
            case Outcome.Read(Range<Q> range) ->
                Optional.of(new Figure<>(range.low(), range.typical(), range.high(), basis));
            case Outcome.NotANumber<Q> trouble ->
                refuse(cursor, ProblemKind.NOT_A_NUMBER, wanted(unit), Phrase.of("problem.hint.none"));
            case Outcome.DecimalComma(String corrected) ->
                refuse(cursor, ProblemKind.NOT_A_NUMBER, wanted(unit), Phrase.of("problem.hint.comma", corrected));
            case Outcome.NoUnit(String completed) ->
                refuse(cursor, ProblemKind.WRONG_UNIT, wanted(unit), Phrase.of("problem.hint.no-unit", completed));
            case Outcome.WrongUnit(String wrong) ->
                refuse(cursor, ProblemKind.WRONG_UNIT, wanted(unit), Phrase.of("problem.hint.wrong-unit", wrong));
            case Outcome.BeyondSense<Q> trouble ->
                refuse(
                        cursor,
                        ProblemKind.OUT_OF_RANGE,
                        Phrase.of("problem.wanted.between", unit.least(), unit.most()),
                        Phrase.of("problem.hint.none"));
            case Outcome.NotRising<Q> trouble ->
                refuse(
                        cursor,
                        ProblemKind.OUT_OF_RANGE,
                        Phrase.of("problem.wanted.rising"),
                        Phrase.of("problem.hint.none"));
        };
    }

    private static <Q extends Quantity> Optional<Figure<Q>> refuse(
            Cursor cursor, ProblemKind kind, Phrase wanted, Phrase hint) {
        cursor.problem(kind, wanted, hint);
        return Optional.empty();
    }

    private static Phrase wanted(Unit<?> unit) {
        return Phrase.of("problem.wanted.quantity", example(unit));
    }

    /** A number with the unit, as an example of how it is written. */
    private static String example(Unit<?> unit) {
        return "12 " + unit.written();
    }

    private <Q extends Quantity> Figure<Q> standIn(Place at, Unit<Q> unit) {
        return Figure.exactly(unit.least(), new Basis(certainty, at));
    }
}
