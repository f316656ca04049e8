package org.loomproof.workshop.example;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * What an example must give, from its {@code expected.yaml}.
 *
 * @param exit the code the command ends with
 * @param hookups the decision by lead, in the kit's order: connect, trim, cap-and-keep or hold
 * @param holding how many claims of each name hold
 * @param open how many claims of each name are open
 * @param declared how many claims of each name hold but for a declared change; left out where none does
 * @param refusals the wishes that are turned down
 * @param holds the names of the measurements that leads wait for
 * @param notNeeded added parts that may be left out without a claim breaking
 * @param handWorked figures of the README
 * @param threshold where the README says a verdict flips
 */
record Expected(
        int exit,
        Map<String, String> hookups,
        Map<String, Integer> holding,
        Map<String, Integer> open,
        Map<String, Integer> declared,
        List<String> refusals,
        List<String> holds,
        List<String> notNeeded,
        List<HandWorked> handWorked,
        Threshold threshold) {

    /**
     * A part of the stock vehicle whose resistance decides a claim.
     *
     * @param element its name on the sheet
     * @param flipsAtOhms the claim holds on one side of this resistance and is broken on the other
     * @param brokenOver true when it is broken over it, false when under it
     * @param claim the claim's id
     */
    record Threshold(String element, double flipsAtOhms, boolean brokenOver, String claim) {}

    /** What a meter is put on. */
    enum Target {
        /** A factory part, across it or through it. */
        ELEMENT,
        /** A factory wire, against the body. */
        CIRCUIT,
        /** An added part, across it or through it; of a relay its coil. */
        PART
    }

    /**
     * One figure that was worked by hand.
     *
     * @param fitted true for the fitted vehicle, false for the stock one
     * @param supply the supply point, by its word
     * @param controller what the controller is doing, by its word
     * @param positions what is not at rest
     * @param target what sort of thing is measured
     * @param name its name on the sheet or in the plan
     * @param volts true for volts, false for amps
     * @param text the figure with its unit
     */
    record HandWorked(
            boolean fitted,
            String supply,
            String controller,
            Map<String, String> positions,
            Target target,
            String name,
            boolean volts,
            String text) {
        /** The figure in volts or amps. */
        double value() {
            String[] words = text.split(" ", -1);
            return Double.parseDouble(words[0]) * (words[1].startsWith("m") ? 1e-3 : 1);
        }
    }

    static Expected of(Path folder) {
        Object read =
                new Load(LoadSettings.builder().build()).loadFromString(ExampleFiles.text(folder, "expected.yaml"));
        Map<?, ?> map = (Map<?, ?>) Objects.requireNonNull(read);
        List<HandWorked> figures = new ArrayList<>();
        for (Object each : list(map, "hand-worked")) {
            figures.add(handWorked((Map<?, ?>) each));
        }
        return new Expected(
                Integer.parseInt(text(map, "exit")),
                words((Map<?, ?>) Objects.requireNonNull(map.get("hookups"))),
                counts(map, "holding"),
                counts(map, "open"),
                map.containsKey("declared") ? counts(map, "declared") : Map.of(),
                list(map, "refusals").stream().map(Object::toString).toList(),
                list(map, "holds").stream().map(Object::toString).toList(),
                list(map, "not-needed").stream().map(Object::toString).toList(),
                List.copyOf(figures),
                threshold((Map<?, ?>) Objects.requireNonNull(map.get("threshold"))));
    }

    private static Threshold threshold(Map<?, ?> map) {
        return new Threshold(
                text(map, "element"),
                Double.parseDouble(text(map, "flips-at-ohms")),
                text(map, "broken").equals("over"),
                text(map, "claim"));
    }

    private static HandWorked handWorked(Map<?, ?> figure) {
        Target target = Target.ELEMENT;
        for (Target each : Target.values()) {
            target = figure.containsKey(word(each)) ? each : target;
        }
        boolean volts = figure.containsKey("volts");
        return new HandWorked(
                text(figure, "vehicle").equals("fitted"),
                text(figure, "supply"),
                figure.containsKey("controller") ? text(figure, "controller") : "disarmed",
                words((Map<?, ?>) Objects.requireNonNull(figure.get("positions"))),
                target,
                text(figure, word(target)),
                volts,
                text(figure, volts ? "volts" : "amps"));
    }

    private static String word(Target target) {
        return target.name().toLowerCase(Locale.ROOT);
    }

    private static List<?> list(Map<?, ?> map, String key) {
        return (List<?>) Objects.requireNonNull(map.get(key), key);
    }

    private static String text(Map<?, ?> map, String key) {
        return Objects.requireNonNull(map.get(key), key).toString();
    }

    private static Map<String, Integer> counts(Map<?, ?> map, String key) {
        Map<String, Integer> counts = new TreeMap<>();
        words((Map<?, ?>) Objects.requireNonNull(map.get(key), key))
                .forEach((name, count) -> counts.put(name, Integer.valueOf(count)));
        return counts;
    }

    private static Map<String, String> words(Map<?, ?> map) {
        Map<String, String> words = new LinkedHashMap<>();
        map.forEach((key, value) -> words.put(String.valueOf(key), String.valueOf(value)));
        return words;
    }
}
