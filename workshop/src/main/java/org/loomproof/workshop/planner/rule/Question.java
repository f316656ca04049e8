package org.loomproof.workshop.planner.rule;

import java.util.List;

/**
 * Something a rule decides: the ways to do it, the one it would take first.
 *
 * @param name stable, for messages and tests
 * @param options at least one, best first; all of them decide the same leads
 */
public record Question(String name, List<Option> options) {

    public Question {
        options = List.copyOf(options);
        if (options.isEmpty()) {
            throw new IllegalArgumentException(name + " has no answer");
        }
    }

    /** A question with one answer. */
    public static Question settled(String name, Option option) {
        return new Question(name, List.of(option));
    }
}
