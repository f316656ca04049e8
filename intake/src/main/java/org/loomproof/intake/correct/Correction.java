package org.loomproof.intake.correct;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.loomproof.intake.check.Answer;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.check.Field;
import org.loomproof.intake.decode.Origin;
import org.loomproof.intake.decode.Passage;
import org.loomproof.intake.field.Claims;
import org.loomproof.intake.field.Evidence;
import org.loomproof.intake.field.Found;
import org.loomproof.intake.field.Polarity;
import org.loomproof.intake.field.Sizes;
import org.loomproof.intake.field.Spot;
import org.loomproof.intake.role.RoleReading;
import org.loomproof.workshop.brief.sheet.CircuitRole;
import org.loomproof.workshop.trade.colour.ColourReader;

/**
 * One thing put right by a person, and how a shop remembers it.
 *
 * @param field which field
 * @param written what stood in the source, folded to small letters without accents
 * @param means what it means: a role's word, a colour, a way of switching, a place, or a size
 */
public record Correction(Field field, String written, String means) {

    public Correction {
        written = key(written);
        means = means.strip().replaceAll("\\s+", " ");
    }

    /** A text as it is compared: small letters without accents, single blanks. */
    static String key(String text) {
        return Passage.fold(text).strip().replaceAll("\\s+", " ");
    }

    /** The correction of an entry's field; what stood there is the field as written, or the circuit's name where it was not read. */
    public static Correction of(Entry entry, Field field, String means) {
        return new Correction(field, written(entry, field), means);
    }

    /** What stands in the source for that field of the entry. */
    static String written(Entry entry, Field field) {
        return switch (field) {
            case ROLE -> entry.name();
            case COLOUR -> entry.colour().map(Answer::written).orElse(entry.colourAsWritten());
            case POLARITY -> entry.behaviour().map(Answer::written).orElse("");
            case PLACE -> entry.spot().map(a -> a.value().panel()).orElse("");
            case SIZE -> entry.size().map(Answer::written).orElse("");
        };
    }

    /** The entry with this put right, sure since a person said so; empty when the meaning cannot be read. */
    public Optional<Entry> applied(Entry entry) {
        Origin origin = entry.origin();
        Passage said = Passage.line(means, origin.line(), origin.column());
        return switch (field) {
            case ROLE -> role().map(role -> entry.withRole(answer(new RoleReading(role, List.of(means)), origin)));
            case COLOUR -> ColourReader.read(means).map(colour -> entry.withColour(answer(colour, origin)));
            case POLARITY ->
                Polarity.inColumn(new Claims(said))
                        .map(Found::value)
                        .map(behaviour -> entry.withBehaviour(answer(behaviour, origin)));
            case SIZE ->
                Sizes.read(new Claims(said)).map(Found::value).map(size -> entry.withSize(answer(size, origin)));
            case PLACE -> means.isBlank() ? Optional.empty() : Optional.of(entry.withSpot(answer(spot(entry), origin)));
        };
    }

    private Spot spot(Entry entry) {
        Spot there = entry.spot().map(Answer::value).orElse(Spot.NOT_SAID);
        return new Spot(means, there.connector(), there.cavity());
    }

    private Optional<CircuitRole> role() {
        return Arrays.stream(CircuitRole.values())
                .filter(role -> role.word().equals(means))
                .findFirst();
    }

    private <T> Answer<T> answer(T value, Origin origin) {
        return new Answer<>(value, Evidence.BY_HAND, 1, origin, means);
    }
}
