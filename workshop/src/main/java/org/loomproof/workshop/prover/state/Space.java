package org.loomproof.workshop.prover.state;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.WorkedSwitch;

/**
 * Every situation that can matter in an area: the positions of the operables whose contacts lie in it, the supply points and
 * the controller's conditions. Positions that set all those contacts alike are one, and the first stands for them.
 *
 * <p>When there are more combinations of positions than {@link #MOST_COMBINATIONS}, the last operables are left at rest and
 * {@link #leftAtRest()} names them: then nothing found here is the whole truth.
 *
 * @param conditions of the controller
 * @param supplies rest first, so that it is tried first
 * @param axes the operables that are moved, the last of the sheet first, so that of two ways to show a thing the one with
 *     the sheet's first operable comes first
 * @param positions all combinations, the first axis slowest
 * @param leftAtRest operables that matter and are not moved
 */
public record Space(
        List<Condition> conditions,
        List<SupplyPoint> supplies,
        List<Axis> axes,
        List<SortedMap<OperableId, String>> positions,
        List<OperableId> leftAtRest) {

    /** Enough for ten openings with key and light switch. */
    public static final int MOST_COMBINATIONS = 1 << 14;

    private static final List<SupplyPoint> SUPPLIES =
            List.of(SupplyPoint.REST, SupplyPoint.LOW, SupplyPoint.CHARGING, SupplyPoint.HIGH, SupplyPoint.CRANKING);

    /** An operable with the positions that differ here, rest first. */
    public record Axis(OperableId operable, List<String> positions) {
        public Axis {
            positions = List.copyOf(positions);
        }
    }

    public Space {
        conditions = List.copyOf(conditions);
        supplies = List.copyOf(supplies);
        axes = List.copyOf(axes);
        positions = List.copyOf(positions);
        leftAtRest = List.copyOf(leftAtRest);
    }

    /** The space of all these parts: of what works a contact among them, and of what a case asks about. */
    public static Space of(
            Sheet sheet,
            List<Condition> conditions,
            Set<PartId> parts,
            Collection<WorkedSwitch> switches,
            Collection<OperableId> askedAbout) {
        List<WorkedSwitch> within = switches.stream()
                .filter(s -> parts.contains(s.part()))
                .distinct()
                .toList();
        List<Axis> axes = new ArrayList<>();
        List<OperableId> leftAtRest = new ArrayList<>();
        long combinations = 1;
        for (Operable operable : sheet.operables()) {
            List<String> different =
                    askedAbout.contains(operable.id()) ? operable.positions() : different(operable, within);
            if (different.size() > 1 && combinations * different.size() > MOST_COMBINATIONS) {
                leftAtRest.add(operable.id());
            } else if (different.size() > 1) {
                axes.add(new Axis(operable.id(), different));
                combinations *= different.size();
            }
        }
        List<Axis> lastFirst = axes.reversed();
        return new Space(conditions, SUPPLIES, lastFirst, product(lastFirst), leftAtRest);
    }

    private static List<String> different(Operable operable, List<WorkedSwitch> switches) {
        Map<Set<PartId>, String> firstOf = new LinkedHashMap<>();
        for (String position : operable.positions()) {
            Set<PartId> closed = switches.stream()
                    .filter(s -> s.operatedBy().equals(operable.id()))
                    .filter(s -> s.closedAt().contains(position))
                    .map(WorkedSwitch::part)
                    .collect(Collectors.toSet());
            firstOf.putIfAbsent(closed, position);
        }
        return List.copyOf(firstOf.values());
    }

    /** All combinations, the first axis slowest. */
    private static List<SortedMap<OperableId, String>> product(List<Axis> axes) {
        List<SortedMap<OperableId, String>> all = List.of(new TreeMap<>());
        for (Axis axis : axes) {
            List<SortedMap<OperableId, String>> longer = new ArrayList<>();
            for (SortedMap<OperableId, String> each : all) {
                for (String position : axis.positions()) {
                    SortedMap<OperableId, String> next = new TreeMap<>(each);
                    next.put(axis.operable(), position);
                    longer.add(next);
                }
            }
            all = longer;
        }
        return all.stream().map(Collections::unmodifiableSortedMap).toList();
    }

    /** Where an operable of an axis stands in a combination. */
    public String position(int combination, OperableId operable) {
        String position = positions.get(combination).get(operable);
        if (position == null) {
            throw new IllegalArgumentException(operable + " is not moved here");
        }
        return position;
    }
}
