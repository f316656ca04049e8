package org.loomproof.book.vehicle;

import java.util.Locale;

/**
 * A vehicle number of 17 characters (ISO 3779) and its check digit as 49 CFR 565.15(c) reckons it: each character's value times
 * the weight of its position, summed, the remainder by 11, with ten written X, in the ninth position.
 *
 * <p>The check digit is law where 49 CFR 565 is; vehicles for other markets have any character there. So a digit that does not
 * agree is a reason to read the plate again, never to refuse the vehicle.
 */
public record VehicleNumber(String text) {

    /** What can be said of a number as it was written. */
    public enum Standing {
        /** 17 characters and the check digit agrees. */
        AGREES,
        /** 17 characters; the check digit does not agree: misread, or not built for North America. */
        DISAGREES,
        /** Not 17 characters, or with one that no vehicle number has (I, O and Q among them). */
        NO_NUMBER
    }

    private static final int LENGTH = 17;
    private static final int CHECK_AT = 8;
    private static final int MODULUS = 11;
    private static final String TEN = "X";

    /** Table of assigned values in 565.15(c)(1): the letters in order, each beside its value; I, O and Q have none. */
    private static final String LETTERS = "ABCDEFGHJKLMNPRSTUVWXYZ";

    private static final String LETTER_VALUES = "12345678123457923456789";

    /** Table of weights in 565.15(c)(2), by position; the check digit itself counts nothing. */
    private static final int[] WEIGHTS = {8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2};

    /** As it was written, without spaces and hyphens, in capitals. */
    public VehicleNumber {
        text = text.replaceAll("[\\s-]", "").toUpperCase(Locale.ROOT);
    }

    /** What can be said of it. */
    public Standing standing() {
        if (text.length() != LENGTH || text.chars().anyMatch(c -> value((char) c) < 0)) {
            return Standing.NO_NUMBER;
        }
        return text.substring(CHECK_AT, CHECK_AT + 1).equals(checkDigit()) ? Standing.AGREES : Standing.DISAGREES;
    }

    /** The check digit that the other sixteen characters ask for. */
    String checkDigit() {
        int sum = 0;
        for (int i = 0; i < LENGTH; i++) {
            sum += WEIGHTS[i] * value(text.charAt(i));
        }
        int digit = sum % MODULUS;
        return digit == MODULUS - 1 ? TEN : Integer.toString(digit);
    }

    private static int value(char character) {
        if (character >= '0' && character <= '9') {
            return character - '0';
        }
        int place = LETTERS.indexOf(character);
        return place < 0 ? -1 : LETTER_VALUES.charAt(place) - '0';
    }
}
