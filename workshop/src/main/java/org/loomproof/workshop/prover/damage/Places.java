package org.loomproof.workshop.prover.damage;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.brief.sheet.Sheet;
import org.loomproof.workshop.prover.explore.Key;
import org.loomproof.workshop.prover.state.Space;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.wiring.WorkedSwitch;

/** Finds the place in a space that stands for a situation. */
final class Places {

    private final Sheet sheet;
    private final Space space;
    private final List<WorkedSwitch> switches;

    /**
     * @param switches those of both vehicles
     * @param parts what the space is about
     */
    Places(Sheet sheet, Space space, Collection<WorkedSwitch> switches, Set<PartId> parts) {
        this.sheet = sheet;
        this.space = space;
        this.switches = switches.stream().filter(s -> parts.contains(s.part())).toList();
    }

    /** The place of the situation; empty when the space has no such condition or supply point. */
    Optional<Key> find(Situation situation) {
        int supply = space.supplies().indexOf(situation.supply());
        for (int c = 0; c < space.conditions().size(); c++) {
            boolean stands = space.conditions().get(c).members().stream()
                    .anyMatch(d -> d.state() == situation.controller()
                            && d.feed() == situation.feed()
                            && d.moment() == situation.moment()
                            && d.still().equals(situation.still()));
            if (stands && supply >= 0) {
                return Optional.of(new Key(c, supply, combination(situation.positions())));
            }
        }
        return Optional.empty();
    }

    /** The first axis is the slowest. */
    private int combination(Map<OperableId, String> positions) {
        int combination = 0;
        for (Space.Axis axis : space.axes()) {
            String wanted = positions.getOrDefault(
                    axis.operable(), sheet.operable(axis.operable()).rest());
            int at = axis.positions().indexOf(wanted);
            combination = combination * axis.positions().size() + (at >= 0 ? at : alike(axis, wanted));
        }
        return combination;
    }

    private int alike(Space.Axis axis, String wanted) {
        Set<PartId> closed = closed(axis.operable(), wanted);
        for (int k = 0; k < axis.positions().size(); k++) {
            if (closed.equals(closed(axis.operable(), axis.positions().get(k)))) {
                return k;
            }
        }
        throw new IllegalArgumentException(axis.operable() + " has no position like " + wanted);
    }

    private Set<PartId> closed(OperableId operable, String position) {
        return switches.stream()
                .filter(s -> s.operatedBy().equals(operable) && s.closedAt().contains(position))
                .map(WorkedSwitch::part)
                .collect(Collectors.toSet());
    }
}
