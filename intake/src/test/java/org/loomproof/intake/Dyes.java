package org.loomproof.intake;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/** Colours as four languages write them. */
final class Dyes {

    private static final List<String> LETTERS =
            List.of("BK", "BN", "RD", "OG", "YE", "GN", "BU", "VT", "GY", "WH", "PK");
    private static final Map<String, List<String>> NAMES = Map.of(
            "en",
                    List.of(
                            "black", "brown", "red", "orange", "yellow", "green", "blue", "violet", "grey", "white",
                            "pink"),
            "short", List.of("BLK", "BRN", "RED", "ORG", "YEL", "GRN", "BLU", "VIO", "GRY", "WHT", "PNK"),
            "de",
                    List.of(
                            "schwarz", "braun", "rot", "orange", "gelb", "grün", "blau", "violett", "grau", "weiß",
                            "rosa"),
            "es",
                    List.of(
                            "negro",
                            "marrón",
                            "rojo",
                            "naranja",
                            "amarillo",
                            "verde",
                            "azul",
                            "violeta",
                            "gris",
                            "blanco",
                            "rosa"),
            "fr",
                    List.of(
                            "noir", "marron", "rouge", "orange", "jaune", "vert", "bleu", "violet", "gris", "blanc",
                            "rose"));
    private static final Map<String, List<String>> JOINTS = Map.of(
            "en", List.of("/", "-", " w/ # tracer", " with # stripe", " and "),
            "short", List.of("/", "-"),
            "de", List.of("/", "-", " mit #em Streifen"),
            "es", List.of("/", "-", " con raya "),
            "fr", List.of("/", "-", " avec filet "));

    private final Random random;
    private final String language;

    Dyes(Random random, String language) {
        this.random = random;
        this.language = language;
    }

    /** A colour as written, and its letters by IEC 60757. */
    record Dyed(String written, String letters) {}

    Dyed dye() {
        String words = language.equals("en") && random.nextBoolean() ? "short" : language;
        int base = random.nextInt(LETTERS.size());
        int tracer = random.nextInt(LETTERS.size());
        String name = name(words, base);
        if (random.nextInt(5) == 0 && (base == 5 || base == 6)) {
            name = shaded(words, name);
        }
        if (tracer == base || random.nextInt(3) == 0) {
            return new Dyed(cased(name), LETTERS.get(base));
        }
        List<String> joints = joints(words);
        String joint = joints.get(random.nextInt(joints.size()));
        String second = name(words, tracer);
        if (second.endsWith("a") && joint.contains("#em")) {
            joint = "/";
        }
        String written = joint.contains("#") ? name + joint.replace("#", second) : name + joint + second;
        return new Dyed(cased(written), LETTERS.get(base) + "/" + LETTERS.get(tracer));
    }

    private static String name(String words, int colour) {
        return NAMES.getOrDefault(words, List.of()).get(colour);
    }

    private static List<String> joints(String words) {
        return JOINTS.getOrDefault(words, List.of());
    }

    private String shaded(String words, String name) {
        return switch (words) {
            case "en" -> (random.nextBoolean() ? "light " : "dark ") + name;
            case "short" -> (random.nextBoolean() ? "LT " : "DK ") + name;
            case "de" -> (random.nextBoolean() ? "hell" : "dunkel") + name;
            case "es" -> name + (random.nextBoolean() ? " claro" : " oscuro");
            default -> name + (random.nextBoolean() ? " clair" : " foncé");
        };
    }

    private String cased(String text) {
        return random.nextInt(4) == 0 ? text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) : text;
    }
}
