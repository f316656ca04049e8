package org.loomproof.intake;

import java.util.List;
import java.util.Map;
import java.util.Random;

/** Ways of switching as four languages write them. */
final class Poles {

    private static final Map<String, List<String>> SAID = Map.ofEntries(
            Map.entry("neg", List.of("-", "(-)")),
            Map.entry("pos", List.of("+", "(+)")),
            Map.entry(
                    "neg en",
                    List.of("neg", "negative", "neg.", "negative pulse", "goes to ground", "ground when active")),
            Map.entry("pos en", List.of("pos", "positive", "pos.", "12V", "+12 V", "12v when on")),
            Map.entry("neg de", List.of("negativ", "minus", "Minus", "schaltet nach Masse", "neg.")),
            Map.entry("pos de", List.of("positiv", "plus", "Plus", "12 V", "pos.")),
            Map.entry("neg es", List.of("negativo", "neg", "a masa", "pulso negativo")),
            Map.entry("pos es", List.of("positivo", "pos", "12 V", "pulso positivo")),
            Map.entry("neg fr", List.of("négatif", "nég", "mise à la masse", "impulsion négative")),
            Map.entry("pos fr", List.of("positif", "pos", "12 V", "impulsion positive")),
            Map.entry("rev en", List.of("5 wire", "reverse polarity", "reversing", "rev. pol.")),
            Map.entry("rev de", List.of("umpolend", "Umpolung")),
            Map.entry("rev es", List.of("inversión de polaridad", "polaridad inversa")),
            Map.entry("rev fr", List.of("inversion de polarité", "polarité inversée")),
            Map.entry("5", List.of("5V", "5 V", "+5V")),
            Map.entry("820", List.of("820 ohm", "820 Ω")),
            Map.entry("1500", List.of("1.5k", "1500 ohm")));

    private static final Map<String, List<String>> OF_ROLE = Map.ofEntries(
            Map.entry("constant-supply", List.of("pos", "")),
            Map.entry("ignition", List.of("pos", "")),
            Map.entry("second-ignition", List.of("pos", "")),
            Map.entry("accessory", List.of("pos", "")),
            Map.entry("starter", List.of("pos")),
            Map.entry("second-starter", List.of("pos")),
            Map.entry("ground", List.of("")),
            Map.entry("door-trigger", List.of("neg", "neg", "pos", "5")),
            Map.entry("hood-trigger", List.of("neg")),
            Map.entry("trunk-trigger", List.of("neg", "pos", "5")),
            Map.entry("lock", List.of("neg", "pos", "rev", "820")),
            Map.entry("unlock", List.of("neg", "pos", "rev", "1500")),
            Map.entry("lock-motor-leg", List.of("rev")),
            Map.entry("tachometer", List.of("")),
            Map.entry("data", List.of("")));

    private final Random random;
    private final String language;

    Poles(Random random, String language) {
        this.random = random;
        this.language = language;
    }

    /** As written, and the answer. */
    record Said(String written, String answer) {}

    Said say(String role) {
        String way = pick(OF_ROLE.getOrDefault(role, List.of("neg", "pos")));
        if (way.isEmpty()) {
            // What "ground" or "data" say of the pole is in the role's own word.
            return new Said("", role.equals("ground") || role.equals("data") ? "*" : "");
        }
        List<String> plain = SAID.getOrDefault(way, List.of());
        List<String> worded = SAID.getOrDefault(way + " " + language, plain);
        return new Said(pick(plain.isEmpty() || random.nextInt(3) > 0 ? worded : plain), way);
    }

    private String pick(List<String> list) {
        return list.get(random.nextInt(list.size()));
    }
}
