package org.loomproof.book.card;

/**
 * Who did something.
 *
 * @param value the name of a person's card, or the word for the console
 */
public record Author(String value) {

    /** Somebody at the machine itself, with the passphrase. */
    public static final Author CONSOLE = new Author("console");

    /** The person with this card. */
    public static Author of(CardId person) {
        return new Author(person.value());
    }
}
