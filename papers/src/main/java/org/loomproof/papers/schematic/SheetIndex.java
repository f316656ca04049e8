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
 * @param own the number of the sheet from which one looks; 0 for none
 */
record SheetIndex(Map<CircuitId, List<Integer>> sheets, int own) {

    /** For a drawing that has one sheet, or none yet. */
    static final SheetIndex NONE = new SheetIndex(Map.of(), 0);

    static SheetIndex of(List<Plan> parts) {
        Map<CircuitId, List<Integer>> sheets = new LinkedHashMap<>();
        for (int i = 0; i < parts.size(); i++) {
            for (CircuitId circuit : Schematic.circuits(parts.get(i))) {
                sheets.computeIfAbsent(circuit, c -> new ArrayList<>()).add(i + 1);
            }
        }
        return new SheetIndex(sheets, 0);
    }

    SheetIndex seenFrom(int index) {
        return new SheetIndex(sheets, index + 1);
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
