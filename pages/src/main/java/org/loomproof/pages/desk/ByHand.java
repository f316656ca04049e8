package org.loomproof.pages.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.file.PlanFileWriter;

/** A plan's parts and wires with the figures that may come out otherwise in the car, one row each. */
public final class ByHand {

    private static final String BETWEEN = " ";

    private ByHand() {}

    /**
     * One part or wire.
     *
     * @param id its name in the plan
     * @param what it is, in words
     * @param figures what may be otherwise, by entry of the plan file, as it is now
     */
    public record Row(String id, String what, Map<String, String> figures) {

        /** The same with what somebody typed. */
        Row with(Map<String, Map<String, String>> typed) {
            Map<String, String> now = new LinkedHashMap<>(figures);
            typed.getOrDefault(id, Map.of()).forEach((figure, value) -> now.replace(figure, value));
            return new Row(id, what, now);
        }

        /** The name of a form's field. */
        public String field(String figure) {
            return id + BETWEEN + figure;
        }
    }

    /**
     * The rows of a plan, parts first.
     *
     * @param typed what somebody typed in them, as it is kept until it can be used
     */
    public static List<Row> rows(Plan plan, Map<String, Map<String, String>> typed, Wording words) {
        List<Row> rows = new ArrayList<>();
        plan.parts()
                .forEach(part -> rows.add(new Row(part.id().value(), words.kind(part), PlanFileWriter.figures(part))));
        plan.wires()
                .forEach(wire -> rows.add(new Row(
                        wire.id().value(),
                        words.end(wire.from()) + " → " + words.end(wire.to()),
                        PlanFileWriter.figures(wire))));
        return rows.stream()
                .filter(row -> !row.figures().isEmpty())
                .map(row -> row.with(typed))
                .toList();
    }

    /** What a form holds, by row and figure. */
    public static Map<String, Map<String, String>> typed(Map<String, String> fields) {
        Map<String, Map<String, String>> typed = new LinkedHashMap<>();
        fields.forEach((field, value) -> {
            String[] names = field.split(BETWEEN, -1);
            if (names.length == 2) {
                typed.computeIfAbsent(names[0], id -> new LinkedHashMap<>()).put(names[1], value);
            }
        });
        return typed;
    }
}
