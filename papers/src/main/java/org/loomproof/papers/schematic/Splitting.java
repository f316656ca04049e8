package org.loomproof.papers.schematic;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;

/**
 * Splits a plan into pieces that have nothing in common but factory wires and the body, and packs them onto sheets in the
 * kit's order. A piece is one lead, or the leads that share added parts or wires. What does not fit a sheet comes apart by
 * function ({@link Functions}); a wire between two sheets is on both.
 */
final class Splitting {

    private final Plan plan;
    private final List<Plan> pieces = new ArrayList<>();

    private Splitting(Plan plan) {
        this.plan = plan;
    }

    static Splitting of(Plan plan) {
        Splitting splitting = new Splitting(plan);
        splitting.gather();
        return splitting;
    }

    /** The things of each piece: leads, added parts and wires. */
    private void gather() {
        Map<Object, Set<Object>> groups = new LinkedHashMap<>();
        plan.hookups().forEach(h -> join(groups, List.of(h.lead())));
        for (AddedWire wire : plan.wires()) {
            List<Object> things = new ArrayList<>(List.of(wire.id()));
            Nets.owner(wire.from()).ifPresent(things::add);
            Nets.owner(wire.to()).ifPresent(things::add);
            join(groups, things);
        }
        plan.parts().forEach(p -> join(groups, List.of(p.id())));
        Set<Set<Object>> distinct = new LinkedHashSet<>(groups.values());
        distinct.stream()
                .map(group -> part(plan, group))
                .filter(Splitting::isDrawn)
                .forEach(pieces::add);
    }

    /** All the things and what each of them was joined with before become one group. */
    private static void join(Map<Object, Set<Object>> groups, List<Object> things) {
        Set<Object> all = new LinkedHashSet<>();
        for (Object thing : things) {
            all.addAll(groups.getOrDefault(thing, Set.of(thing)));
        }
        all.forEach(thing -> groups.put(thing, all));
    }

    /** The leads, added parts and wires that are among these things, in the plan's order. */
    static Plan part(Plan plan, Set<Object> things) {
        return new Plan(
                plan.hookups().stream().filter(h -> things.contains(h.lead())).toList(),
                plan.parts().stream().filter(p -> things.contains(p.id())).toList(),
                plan.wires().stream().filter(w -> things.contains(w.id())).toList(),
                List.of(),
                List.of());
    }

    private static boolean isDrawn(Plan piece) {
        boolean isLive = piece.hookups().stream().anyMatch(h -> switch (h) {
            case Hookup.Connect c -> true;
            case Hookup.Hold c -> true;
            case Hookup.Trim c -> false;
            case Hookup.CapAndKeep c -> false;
        });
        return isLive || !piece.wires().isEmpty() || !piece.parts().isEmpty();
    }

    /** The pieces in the kit's order, each as small as it must be to fit. */
    List<Plan> pieces(Predicate<Plan> fits) {
        return pieces.stream()
                .flatMap(piece -> fits.test(piece) ? Stream.of(piece) : new Functions(piece).thatFit(fits).stream())
                .toList();
    }

    /** Each piece goes onto the first sheet that has room for it; one that never fits gets a sheet of its own. */
    List<Plan> intoSheets(Predicate<Plan> fits) {
        List<Plan> sheets = new ArrayList<>();
        for (Plan piece : pieces(fits)) {
            boolean isPlaced = false;
            for (int i = 0; i < sheets.size() && !isPlaced; i++) {
                Plan together = merged(sheets.get(i), piece);
                if (fits.test(together)) {
                    sheets.set(i, together);
                    isPlaced = true;
                }
            }
            if (!isPlaced) {
                sheets.add(piece);
            }
        }
        return sheets;
    }

    private Plan merged(Plan one, Plan other) {
        Set<Object> things = new LinkedHashSet<>();
        for (Plan each : List.of(one, other)) {
            each.hookups().forEach(h -> things.add(h.lead()));
            each.parts().forEach(p -> things.add(p.id()));
            each.wires().forEach(w -> things.add(w.id()));
        }
        return part(plan, things);
    }
}
