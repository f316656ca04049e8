package org.loomproof.workshop.words;

import java.util.List;

/**
 * One sentence or label before it has a language: the key of a message and what goes into its holes.
 *
 * @param key the message's key, such as {@code reason.straight}
 * @param arguments strings, numbers, phrases, or anything whose {@code toString} is fit to be read; in the order of the holes
 */
public record Phrase(String key, List<Object> arguments) {

    public Phrase {
        if (key.isBlank()) {
            throw new IllegalArgumentException("a phrase needs a key");
        }
        arguments = List.copyOf(arguments);
    }

    /** A phrase with its arguments in the order of the holes. */
    public static Phrase of(String key, Object... arguments) {
        return new Phrase(key, List.of(arguments));
    }
}
