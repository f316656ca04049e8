package org.loomproof.workshop.trade.colour;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.loomproof.workshop.trade.table.Row;
import org.loomproof.workshop.trade.table.Table;

/**
 * Reads insulation colours as people write them in English: {@code GN/BK}, {@code green with black tracer}, {@code LT
 * GRN/blk}, {@code black stripe on white}, {@code RDBU}. Base first, tracer second, unless the text says "on". What might
 * be two things (a bare {@code B} is black here and blue there) is not read at all.
 */
public final class ColourReader {
    private static final Map<String, Hue> WORDS = words();
    private static final Map<String, String> SHADES = Map.of(
            "light", "light", "lt", "light", "lgt", "light", "lite", "light", "pale", "light", "dark", "dark", "dk",
            "dark", "drk", "dark", "deep", "dark");

    private ColourReader() {}

    private record Hue(Colour colour, String shade) {}

    /** The colour the text means, or nothing when it means none or might mean two. */
    public static Optional<WireColour> read(String text) {
        if (text.chars().anyMatch(Character::isDigit)) {
            return Optional.empty();
        }
        List<String> words = new ArrayList<>();
        boolean tracerFirst = false;
        for (String word : text.toLowerCase(Locale.ROOT).split("[^a-z]+", -1)) {
            switch (word) {
                case "",
                        "with",
                        "w",
                        "and",
                        "a",
                        "an",
                        "the",
                        "tracer",
                        "trace",
                        "stripe",
                        "striped",
                        "str",
                        "stripes",
                        "line",
                        "band",
                        "base",
                        "wire",
                        "solid",
                        "plain" -> {
                    if (word.equals("w") && !isTracerMark(text)) {
                        words.add(word);
                    }
                }
                case "on" -> {
                    if (tracerFirst || words.isEmpty()) {
                        return Optional.empty();
                    }
                    tracerFirst = true;
                }
                default -> words.add(word);
            }
        }
        List<Hue> hues = hues(words);
        if (hues.isEmpty() || hues.size() > 2 || (tracerFirst && hues.size() != 2)) {
            return Optional.empty();
        }
        return Optional.of(tracerFirst ? joined(hues.reversed()) : joined(hues));
    }

    /** True when the letter W stands for "with", as in {@code w/ blue}. */
    private static boolean isTracerMark(String text) {
        return text.toLowerCase(Locale.ROOT).matches(".*[a-z]+\\s+w\\s*/.*");
    }

    private static WireColour joined(List<Hue> hues) {
        Hue base = hues.getFirst();
        if (hues.size() == 1) {
            return new WireColour(base.colour(), Optional.empty(), base.shade());
        }
        Hue tracer = hues.getLast();
        String shade = tracer.shade().isEmpty() ? base.shade() : base.shade() + "/" + tracer.shade();
        return new WireColour(base.colour(), Optional.of(tracer.colour()), shade);
    }

    /** The hues the words name, in order; empty when a word is no colour or a shade has none behind it. */
    private static List<Hue> hues(List<String> words) {
        List<Hue> hues = new ArrayList<>();
        String shade = "";
        for (String word : words) {
            String shadeWord = SHADES.get(word);
            if (shadeWord != null && shade.isEmpty()) {
                shade = shadeWord;
                continue;
            }
            List<Hue> named = named(word);
            if (named.isEmpty() || shadeWord != null) {
                return List.of();
            }
            for (Hue hue : named) {
                hues.add(shade.isEmpty() ? hue : new Hue(hue.colour(), shade));
                shade = "";
            }
        }
        return shade.isEmpty() ? hues : List.of();
    }

    /** One word as one colour, or as two short forms written together. */
    private static List<Hue> named(String word) {
        Hue whole = WORDS.get(word);
        if (whole != null) {
            return List.of(whole);
        }
        for (String mark : SHADES.keySet()) {
            Hue shaded = word.startsWith(mark) ? WORDS.get(word.substring(mark.length())) : null;
            if (shaded != null && mark.length() > 1 && word.length() - mark.length() > 1) {
                return List.of(new Hue(shaded.colour(), SHADES.getOrDefault(mark, "")));
            }
        }
        List<Hue> pair = List.of();
        for (int cut = 2; cut <= word.length() - 2; cut++) {
            Hue base = WORDS.get(word.substring(0, cut));
            Hue tracer = WORDS.get(word.substring(cut));
            if (base != null && tracer != null) {
                List<Hue> found = List.of(base, tracer);
                if (!pair.isEmpty() && !pair.equals(found)) {
                    return List.of();
                }
                pair = found;
            }
        }
        return pair;
    }

    private static Map<String, Hue> words() {
        Map<String, Colour> byLetters = new HashMap<>();
        for (Colour colour : Colour.values()) {
            byLetters.put(colour.code(), colour);
        }
        Map<String, Hue> hues = new HashMap<>();
        for (Row row : Table.read(ColourReader.class, "words.csv").listRows()) {
            Colour colour = byLetters.get(row.text("letters"));
            if (colour == null) {
                throw new IllegalStateException(row.where() + ": no colour " + row.text("letters"));
            }
            hues.put(row.text("word"), new Hue(colour, row.text("shade")));
        }
        return Map.copyOf(hues);
    }
}
