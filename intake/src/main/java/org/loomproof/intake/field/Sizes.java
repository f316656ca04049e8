package org.loomproof.intake.field;

import java.util.Optional;
import java.util.regex.Pattern;
import org.loomproof.workshop.quantity.QuantityText;
import org.loomproof.workshop.quantity.Range;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.quantity.Unit;

/** Reads a conductor's size, in mm² or by its gauge. Thick and thin are words, not sizes. */
public final class Sizes {

    private static final Pattern METRIC =
            Pattern.compile("(?<![\\w.])(\\d{1,2}(?:[.,]\\d{1,2})?)\\s*(?:mm\\s?\\^?2|sq\\.?\\s?mm|qmm|mm(?!\\w))");
    private static final Pattern GAUGE =
            Pattern.compile("(?<![\\w.])(\\d{1,2})\\s*-?\\s*(?:awg|gauge|ga)\\b\\.?|\\bawg\\s*(\\d{1,2})\\b");

    private Sizes() {}

    /** The size that is said, claimed. */
    public static Optional<Found<SquareMillimetres>> read(Claims claims) {
        if (!claims.hasNumber()) {
            return Optional.empty();
        }
        return claims.claim(METRIC)
                .flatMap(m -> size(m.group(1).replace(',', '.') + " mm2", claims, m.start(), m.end()))
                .or(() -> claims.claim(GAUGE)
                        .flatMap(m -> size(
                                (m.group(1) == null ? m.group(2) : m.group(1)) + " AWG", claims, m.start(), m.end())));
    }

    private static Optional<Found<SquareMillimetres>> size(String text, Claims claims, int from, int to) {
        if (QuantityText.read(text, Unit.SQUARE_MILLIMETRES) instanceof QuantityText.Outcome.Read<?>(Range<?> range)) {
            return Optional.of(new Found<>(
                    new SquareMillimetres(range.low().value()),
                    Evidence.AMONG_OTHERS,
                    claims.origin(from, to),
                    claims.written(from, to)));
        }
        return Optional.empty();
    }
}
