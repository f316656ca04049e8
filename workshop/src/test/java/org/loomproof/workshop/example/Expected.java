package org.loomproof.workshop.example;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
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
 * @param refusals the wishes that are turned down
 * @param holds the names of the measurements that leads wait for
 * @param handWorked figures of the README
 */
record Expected(
        int exit,
        Map<String, String> hookups,
        Map<String, Integer> holding,
        Map<String, Integer> open,
        List<String> refusals,
        List<String> holds,
        List<HandWorked> handWorked) {

    /**
     * One figure that was worked by hand.
     *
     * @param fitted true for the fitted vehicle, false for the stock one
     * @param supply the supply point, by its word
     * @param positions what is not at rest
     * @param element the factory part it is of
     * @param volts true for volts across it, false for amps through it
     * @param text the figure with its unit
     */
    record HandWorked(
            boolean fitted, String supply, Map<String, String> positions, String element, boolean volts, String text) {
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
            Map<?, ?> figure = (Map<?, ?>) each;
            boolean volts = figure.containsKey("volts");
            figures.add(new HandWorked(
                    text(figure, "vehicle").equals("fitted"),
                    text(figure, "supply"),
                    words((Map<?, ?>) Objects.requireNonNull(figure.get("positions"))),
                    text(figure, "element"),
                    volts,
                    text(figure, volts ? "volts" : "amps")));
        }
        return new Expected(
                Integer.parseInt(text(map, "exit")),
                words((Map<?, ?>) Objects.requireNonNull(map.get("hookups"))),
                counts(map, "holding"),
                counts(map, "open"),
                list(map, "refusals").stream().map(Object::toString).toList(),
                list(map, "holds").stream().map(Object::toString).toList(),
                List.copyOf(figures));
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
