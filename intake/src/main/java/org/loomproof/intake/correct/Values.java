package org.loomproof.intake.correct;

import java.util.Optional;
import org.loomproof.intake.check.Answer;
import org.loomproof.intake.check.Entry;
import org.loomproof.intake.check.Field;

/** What an entry says in a field, without how it came to be read. */
final class Values {

    private Values() {}

    static Optional<?> of(Entry entry, Field field) {
        return switch (field) {
            case ROLE -> entry.role().map(a -> a.value().role());
            case COLOUR -> entry.colour().map(Answer::value);
            case SIZE -> entry.size().map(Answer::value);
            case POLARITY -> entry.behaviour().map(Answer::value);
            case PLACE -> entry.spot().map(Answer::value);
        };
    }
}
