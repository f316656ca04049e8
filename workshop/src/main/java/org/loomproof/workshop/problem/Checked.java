package org.loomproof.workshop.problem;

import java.util.List;

/** Either what was asked for, or every problem that stands in its way. */
public sealed interface Checked<T> {

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
