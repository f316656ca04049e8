package org.loomproof.intake.decode;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** A stretch of text in which every character knows where it stood in the source, even after wrapped lines were joined. */
public final class Passage {

    private static final int PLAIN_LETTERS = 0x180;
    private static final char[] FOLDED = foldedLetters();

    private final String text;
    private final int[] lines;
    private final int[] columns;
    private final String folded;

    private Passage(String text, int[] lines, int[] columns) {
        this(text, fold(text), lines, columns);
    }

    private Passage(String text, String folded, int[] lines, int[] columns) {
        this.text = text;
        this.lines = lines;
        this.columns = columns;
        this.folded = folded;
    }

    /** A line of the source. */
    public static Passage line(String text, int number, int firstColumn) {
        int[] lines = new int[text.length()];
        int[] columns = new int[text.length()];
        Arrays.fill(lines, number);
        for (int i = 0; i < columns.length; i++) {
            columns[i] = firstColumn + i;
        }
        return new Passage(text, lines, columns);
    }

    /** Passages one behind the other with a space between; the space stands where the one before ended. */
    public static Passage join(List<Passage> parts) {
        List<Passage> spaced = new ArrayList<>();
        for (Passage part : parts) {
            if (!part.isBlank()) {
                if (!spaced.isEmpty()) {
                    spaced.add(spaced.getLast().blankBehind());
                }
                spaced.add(part);
            }
        }
        return append(spaced);
    }

    /** Passages one behind the other, with nothing between. */
    public static Passage append(List<Passage> parts) {
        if (parts.size() == 1) {
            return parts.getFirst();
        }
        int length = parts.stream().mapToInt(Passage::length).sum();
        StringBuilder text = new StringBuilder();
        int[] lines = new int[length];
        int[] columns = new int[length];
        for (Passage part : parts) {
            System.arraycopy(part.lines, 0, lines, text.length(), part.length());
            System.arraycopy(part.columns, 0, columns, text.length(), part.length());
            text.append(part.text);
        }
        return new Passage(text.toString(), lines, columns);
    }

    private Passage blankBehind() {
        return new Passage(" ", new int[] {lines[lines.length - 1]}, new int[] {columns[columns.length - 1]});
    }

    /** Another text in place of this one, which must not be empty: each of its characters stands where this begins. */
    public Passage standingFor(String other) {
        int[] otherLines = new int[other.length()];
        int[] otherColumns = new int[other.length()];
        Arrays.fill(otherLines, lines[0]);
        Arrays.fill(otherColumns, columns[0]);
        if (other.length() > 0) {
            otherLines[other.length() - 1] = lines[lines.length - 1];
            otherColumns[other.length() - 1] = columns[columns.length - 1];
        }
        return new Passage(other, otherLines, otherColumns);
    }

    /** The part between two offsets, without the blanks at its ends. */
    public Passage slice(int from, int to) {
        int start = from;
        int end = to;
        while (start < end && Character.isWhitespace(text.charAt(start))) {
            start++;
        }
        while (end > start && Character.isWhitespace(text.charAt(end - 1))) {
            end--;
        }
        return part(start, end);
    }

    /** The part between two offsets with its blanks. */
    public Passage part(int from, int to) {
        return new Passage(
                text.substring(from, to),
                folded.substring(from, to),
                Arrays.copyOfRange(lines, from, to),
                Arrays.copyOfRange(columns, from, to));
    }

    /** Where the part between two offsets stands; the part must not be empty. */
    public Origin origin(int from, int to) {
        return new Origin(lines[from], columns[from], lines[to - 1], columns[to - 1]);
    }

    /** Where all of it stands; it must not be empty. */
    public Origin origin() {
        return origin(0, length());
    }

    /** As written. */
    public String text() {
        return text;
    }

    /** In small letters without accents, character for character as long as {@link #text()}. */
    public String folded() {
        return folded;
    }

    public int length() {
        return text.length();
    }

    public boolean isBlank() {
        return text.isBlank();
    }

    @Override
    public String toString() {
        return text;
    }

    /** Small letters without accents, character for character: {@code Türe} becomes {@code ture}. */
    public static String fold(String text) {
        char[] out = new char[text.length()];
        for (int i = 0; i < out.length; i++) {
            char c = text.charAt(i);
            out[i] = c < PLAIN_LETTERS ? FOLDED[c] : other(c);
        }
        return new String(out);
    }

    private static char other(char c) {
        return switch (c) {
            case '\u2010', '\u2011', '\u2012', '\u2013', '\u2014', '\u2212' -> '-';
            case '\u2018', '\u2019' -> '\'';
            case '\u201C', '\u201D', '\u201E' -> '"';
            case '\u03A9', '\u2126' -> '\u03C9';
            default -> Character.toLowerCase(c);
        };
    }

    private static char[] foldedLetters() {
        char[] folded = new char[PLAIN_LETTERS];
        for (char c = 0; c < PLAIN_LETTERS; c++) {
            String small = String.valueOf(c).toLowerCase(Locale.ROOT);
            folded[c] = switch (c) {
                case '\u00DF' -> 's';
                case '\u00A0' -> ' ';
                case '\u00B2' -> '2';
                default -> Normalizer.normalize(small, Normalizer.Form.NFD).charAt(0);
            };
        }
        return folded;
    }
}
