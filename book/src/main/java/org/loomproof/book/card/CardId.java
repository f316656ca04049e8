package org.loomproof.book.card;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The name of a card: 26 letters and digits drawn by chance (130 bits), so that nothing can be told or guessed from it.
 *
 * @param value as it stands in addresses and rows
 */
public record CardId(String value) implements Comparable<CardId> {

    private static final String ALPHABET = "abcdefghijklmnopqrstuvwxyz234567";
    private static final int LENGTH = 26;
    private static final Pattern SHAPE = Pattern.compile("[a-z2-7]{" + LENGTH + "}");
    private static final SecureRandom CHANCE = new SecureRandom();

    public CardId {
        if (!SHAPE.matcher(value).matches()) {
            throw new IllegalArgumentException("not the name of a card");
        }
    }

    /** A name nobody has. */
    public static CardId fresh() {
        StringBuilder name = new StringBuilder(LENGTH);
        for (int i = 0; i < LENGTH; i++) {
            name.append(ALPHABET.charAt(CHANCE.nextInt(ALPHABET.length())));
        }
        return new CardId(name.toString());
    }

    /** The name of what goes with a card as its only one of a kind: drawn from the card's own name, the same each time. */
    public static CardId beside(CardId card, CardKind kind) {
        byte[] sum = sha256(kind.word() + " of " + card.value());
        StringBuilder name = new StringBuilder(LENGTH);
        for (int i = 0; i < LENGTH; i++) {
            name.append(ALPHABET.charAt(sum[i] & ALPHABET.length() - 1));
        }
        return new CardId(name.toString());
    }

    private static byte[] sha256(String text) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** The name in a text from outside, when it is one. */
    public static Optional<CardId> in(String text) {
        return SHAPE.matcher(text).matches() ? Optional.of(new CardId(text)) : Optional.empty();
    }

    @Override
    public int compareTo(CardId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
