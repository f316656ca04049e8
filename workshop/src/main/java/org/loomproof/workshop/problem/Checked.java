package org.loomproof.workshop.problem;

import java.util.List;
import java.util.Optional;

/** Either what was asked for, or every problem that stands in its way. */
public sealed interface Checked<T> {

    /** The value; where there is none, its problems are added to those of other files, so that all are told at once. */
    default Optional<T> orTell(List<Problem> problems) {
        return switch (this) {
            case Good<T>(T value) -> Optional.of(value);
            case Bad<T>(List<Problem> found) -> {
                problems.addAll(found);
                yield Optional.empty();
            }
        };
    }

    /** The value, read without a problem. */
    record Good<T>(T value) implements Checked<T> {}

    /** At least one problem, in the order of the text. */
    record Bad<T>(List<Problem> problems) implements Checked<T> {
        public Bad {
            problems = List.copyOf(problems);
            if (problems.isEmpty()) {
                throw new IllegalArgumentException("bad needs a problem");
            }
        }
    }
}
