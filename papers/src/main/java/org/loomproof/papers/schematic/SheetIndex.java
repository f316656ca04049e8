package org.loomproof.papers.schematic;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.plan.Plan;

/**
 * On which sheets each circuit is drawn.
 *
 * @param sheets numbers from 1, for each circuit
 * @param numbers the number of each part's first sheet, where its circuits are drawn
 * @param own the number of the sheet from which one looks; 0 for none
 */
record SheetIndex(Map<CircuitId, List<Integer>> sheets, List<Integer> numbers, int own) {

    /** For a drawing that has one sheet, or none yet. */
    static final SheetIndex NONE = new SheetIndex(Map.of(), List.of(), 0);

    /**
     * The index of a plan's parts.
     *
     * @param counts on how many sheets each part is drawn
     */
    static SheetIndex of(List<Plan> parts, List<Integer> counts) {
        Map<CircuitId, List<Integer>> sheets = new LinkedHashMap<>();
        List<Integer> numbers = new ArrayList<>();
        int next = 1;
        for (int i = 0; i < parts.size(); i++) {
            numbers.add(next);
            for (CircuitId circuit : Schematic.circuits(parts.get(i))) {
                sheets.computeIfAbsent(circuit, c -> new ArrayList<>()).add(next);
            }
            next += counts.get(i);
        }
        return new SheetIndex(sheets, numbers, 0);
    }

    SheetIndex seenFrom(int part) {
        return new SheetIndex(sheets, numbers, numbers.get(part));
    }

    /** Where else the circuit is drawn, in words; empty when nowhere. */
    String also(CircuitId circuit, Wording words) {
        String others = sheets.getOrDefault(circuit, List.of()).stream()
                .filter(n -> n != own)
                .map(String::valueOf)
                .collect(Collectors.joining(", "));
        return others.isEmpty() ? "" : words.of("schematic.also-on", others);
    }
}
