package org.loomproof.papers.schematic;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Plan;

/**
 * On which sheets everything is drawn.
 *
 * @param circuits the numbers, from 1, of each circuit's sheets
 * @param owners the number of the sheet of each lead and each added part
 * @param own the number of the sheet from which one looks; 0 for none
 */
record SheetIndex(Map<CircuitId, List<Integer>> circuits, Map<Object, Integer> owners, int own) {

    /** For a drawing whose sheet is not known yet: it leaves room for the numbers of others. */
    static final SheetIndex NONE = new SheetIndex(Map.of(), Map.of(), 0);

    /** As wide as any number of a sheet is going to be, and as most lists of them are. */
    private static final String NOT_KNOWN = "00";

    /** The index of a plan's parts, each on a sheet of its own. */
    static SheetIndex of(List<Plan> parts) {
        List<Integer> numbers = IntStream.rangeClosed(1, parts.size()).boxed().toList();
        Map<CircuitId, List<Integer>> circuits = new LinkedHashMap<>();
        for (int number : numbers) {
            for (CircuitId circuit : PlanDrawing.circuits(parts.get(number - 1))) {
                circuits.computeIfAbsent(circuit, c -> new ArrayList<>()).add(number);
            }
        }
        return new SheetIndex(circuits, ofOwners(parts, numbers).owners, 0);
    }

    /**
     * Leads and added parts alone.
     *
     * @param numbers the sheet of each of the plan's parts
     */
    static SheetIndex ofOwners(List<Plan> parts, List<Integer> numbers) {
        Map<Object, Integer> owners = new HashMap<>();
        for (int i = 0; i < parts.size(); i++) {
            int number = numbers.get(i);
            parts.get(i).hookups().forEach(hookup -> owners.put(hookup.lead(), number));
            parts.get(i).parts().forEach(part -> owners.put(part.id(), number));
        }
        return new SheetIndex(Map.of(), owners, 0);
    }

    SheetIndex seenFrom(int number) {
        return new SheetIndex(circuits, owners, number);
    }

    /** Where else the circuit is drawn, in words; empty when nowhere. */
    String also(CircuitId circuit, Wording words) {
        if (owners.isEmpty()) {
            return words.of("schematic.also-on", NOT_KNOWN);
        }
        String others = circuits.getOrDefault(circuit, List.of()).stream()
                .filter(n -> n != own)
                .map(String::valueOf)
                .collect(Collectors.joining(", "));
        return others.isEmpty() ? "" : words.of("schematic.also-on", others);
    }

    /** The number of the sheet on which an end of a lead or an added part is drawn. */
    String sheetOf(End end) {
        return Nets.owner(end).map(owners::get).map(String::valueOf).orElse(NOT_KNOWN);
    }
}
