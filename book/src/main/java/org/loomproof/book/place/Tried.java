package org.loomproof.book.place;

import java.util.function.Supplier;

/** What was asked for, or why not. */
public sealed interface Tried<T> {

    /** It worked. */
    record Done<T>(T value) implements Tried<T> {}

    /** It did not, and nothing was changed. */
    record Not<T>(Refusal why) implements Tried<T> {}

    /** Does the work; a refusal inside it becomes the answer. */
    static <T> Tried<T> of(Supplier<T> work) {
        try {
            return new Done<>(work.get());
        } catch (Refused e) {
            return new Not<>(e.refusal());
        }
    }

    /** The value, for those who know that there is one. */
    default T orThrow() {
        return switch (this) {
            case Done<T>(T value) -> value;
            case Not<T>(Refusal why) -> throw new Refused(why);
        };
    }
}
