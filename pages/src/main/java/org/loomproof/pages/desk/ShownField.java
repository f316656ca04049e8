package org.loomproof.pages.desk;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomproof.intake.check.Answer;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.check.Field;
import org.loomproof.intake.correct.Likely;
import org.loomproof.intake.correct.ReviewLine;
import org.loomproof.intake.correct.Suggestion;
import org.loomproof.intake.field.Behaviour;
import org.loomproof.intake.sheet.Placed;
import org.loomproof.workshop.brief.text.Words;
import org.loomproof.workshop.quantity.QuantityWriter;

/**
 * One field of an entry on the page of corrections.
 *
 * @param field its word
 * @param value what was understood; empty when nothing was
 * @param percent how sure
 * @param why the word of the evidence
 * @param written the words it was read from
 * @param likely what it may well be instead
 * @param suggestion what the shop once said about such a text
 */
public record ShownField(
        String field,
        String value,
        long percent,
        String why,
        String written,
        List<String> likely,
        Optional<Suggestion> suggestion) {

    public ShownField {
        likely = List.copyOf(likely);
    }

    /** The fields of an entry, in the order of the work; a size that nobody wrote is not asked for. */
    public static List<ShownField> of(ReviewLine line) {
        Entry entry = line.entry();
        return Stream.of(
                        shown(
                                line,
                                Field.ROLE,
                                entry.role(),
                                role -> role.role().word()),
                        shown(line, Field.COLOUR, entry.colour(), colour -> colour.letters()),
                        shown(line, Field.POLARITY, entry.behaviour(), ShownField::way),
                        shown(
                                line,
                                Field.PLACE,
                                entry.spot(),
                                spot -> Stream.of(spot.panel(), spot.connector(), spot.cavity())
                                        .filter(part -> !part.isEmpty())
                                        .collect(Collectors.joining(", "))),
                        shown(line, Field.SIZE, entry.size(), QuantityWriter::write))
                .filter(field -> !(field.field().equals(Words.of(Field.SIZE))
                        && field.value().isEmpty()))
                .toList();
    }

    /** A reading at least this sure needs no look, in percent. */
    private static final long SURE = 95;

    /** True for what was read and is sure, and about which the shop says nothing else. */
    public boolean isSure() {
        return !value.isEmpty() && percent >= SURE && suggestion.isEmpty();
    }

    /** True when an entry needs no look: every field is sure, a place that nobody says aside, and all of it was understood, undoubted and for any vehicle. */
    public static boolean isSure(ReviewLine line, Placed placed) {
        Entry entry = line.entry();
        String place = Words.of(Field.PLACE);
        return placed instanceof Placed.OnSheet
                && !entry.doubted()
                && entry.validity().isEmpty()
                && entry.leftOver().isEmpty()
                && of(line).stream()
                        .allMatch(field -> field.isSure()
                                || (field.field().equals(place) && field.value().isEmpty()));
    }

    private static String way(Behaviour behaviour) {
        return Words.of(behaviour.kind());
    }

    private static <T> ShownField shown(
            ReviewLine line, Field field, Optional<Answer<T>> answer, Function<T, String> value) {
        return new ShownField(
                Words.of(field),
                answer.map(a -> value.apply(a.value())).orElse(""),
                answer.map(a -> Math.round(a.sure() * 100)).orElse(0L),
                answer.map(a -> Words.of(a.evidence())).orElse(""),
                answer.map(Answer::written)
                        .orElse(field == Field.COLOUR ? line.entry().colourAsWritten() : ""),
                Likely.of(line, field),
                line.suggestions().stream()
                        .filter(s -> s.correction().field() == field)
                        .findFirst());
    }
}
