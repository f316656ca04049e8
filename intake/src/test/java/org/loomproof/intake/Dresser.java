package org.loomproof.intake;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/** Dresses a known sheet in a random shape and language, with words of its own. The same seed gives the same sheet. */
final class Dresser {

    private static final List<String> LANGUAGES = List.of("en", "de", "es", "fr");
    private static final List<String> NONSENSE =
            List.of("florp", "vexil", "grumbix", "tozzer", "quandle", "mibber", "sprang", "yolvic", "drumpel", "wexon");

    private final Random random;
    private final boolean heldBack;
    private final String language;

    /** @param heldBack whether the words are those that nothing was tuned on */
    Dresser(long seed, boolean heldBack) {
        this.random = new Random(seed * 31 + (heldBack ? 17 : 0));
        this.heldBack = heldBack;
        this.language = LANGUAGES.get(random.nextInt(LANGUAGES.size()));
    }

    /** A dressed sheet with the right answers. */
    record Dressed(String name, String text, List<List<String>> answers) {}

    /** One circuit as it will be written. */
    private record Row(String role, String colour, String polarity, String place, List<String> answer) {}

    Dressed sheet(long seed) {
        List<String> roles = new ArrayList<>(words("words.txt").keySet().stream()
                .filter(k -> k.endsWith(" " + language))
                .toList());
        List<Row> rows = new ArrayList<>();
        int count = 3 + random.nextInt(6);
        for (int i = 0; i < count; i++) {
            rows.add(row(roles.remove(random.nextInt(roles.size()))));
        }
        int shape = random.nextInt(Shapes.COUNT);
        String text = new Shapes(random, language, pick(headers()))
                .text(
                        shape,
                        rows.stream()
                                .map(r -> new String[] {r.role(), r.colour(), r.polarity(), r.place()})
                                .toList());
        List<List<String>> answers = new ArrayList<>();
        rows.forEach(r -> answers.add(Shapes.saysPlace(shape) ? r.answer() : withoutPlace(r.answer())));
        return new Dressed(
                (heldBack ? "held back " : "generated ") + seed + " (" + language + ", shape " + shape + ")",
                text,
                answers);
    }

    private static List<String> withoutPlace(List<String> answer) {
        return List.of(answer.get(0), answer.get(1), answer.get(2), "*");
    }

    private Row row(String key) {
        String role = key.substring(0, key.indexOf(' '));
        boolean unknown = random.nextInt(20) == 0;
        String phrase = unknown
                ? NONSENSE.get(random.nextInt(NONSENSE.size())) + " " + NONSENSE.get(random.nextInt(NONSENSE.size()))
                : misspelt(cased(pick(words("words.txt").getOrDefault(key, List.of()))));
        Dyes.Dyed dyed = new Dyes(random, language).dye();
        Poles.Said pole = new Poles(random, language).say(unknown ? "other" : role);
        String place = pick(words("places.txt").getOrDefault(language, List.of()));
        String doubt = random.nextInt(12) == 0 ? List.of(" ??", " (?)", " ?").get(random.nextInt(3)) : "";
        // Some names say the pole themselves.
        boolean named = phrase.toLowerCase(Locale.ROOT).matches(".*(positiv|plus|\\+|12|minus|negativ).*");
        String way = pole.answer().isEmpty() && named ? "*" : pole.answer();
        List<String> answer = List.of(unknown ? "unknown" : role, dyed.letters(), way, place + "||");
        return new Row(phrase, dyed.written() + doubt, pole.written(), place, answer);
    }

    private String cased(String phrase) {
        return switch (random.nextInt(5)) {
            case 0 -> phrase.toUpperCase(Locale.ROOT);
            case 1 -> phrase.toLowerCase(Locale.ROOT);
            default -> phrase;
        };
    }

    /** Now and then two letters inside a long word change places. */
    private String misspelt(String phrase) {
        if (random.nextInt(25) != 0 || phrase.length() < 9 || phrase.contains(" ")) {
            return phrase;
        }
        int at = 3 + random.nextInt(phrase.length() - 5);
        return phrase.substring(0, at) + phrase.charAt(at + 1) + phrase.charAt(at) + phrase.substring(at + 2);
    }

    private List<String[]> headers() {
        return lines("headers.txt").stream()
                .filter(l -> l.startsWith(language + ":"))
                .map(l -> l.substring(3).strip().split("; ", -1))
                .toList();
    }

    private <T> T pick(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    /** The phrases by what stands in front of their colon: those tuned on, or those held back. */
    private Map<String, List<String>> words(String file) {
        Map<String, List<String>> words = new LinkedHashMap<>();
        for (String line : lines(file)) {
            String[] halves = line.substring(line.indexOf(':') + 1).split("\\|", -1);
            words.put(
                    line.substring(0, line.indexOf(':')),
                    List.of(halves[heldBack ? 1 : 0].strip().split("; ", -1)));
        }
        return words;
    }

    private static List<String> lines(String file) {
        try (InputStream in = Dresser.class.getResourceAsStream("generator/" + file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(l -> !l.isBlank() && !l.startsWith("#"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
