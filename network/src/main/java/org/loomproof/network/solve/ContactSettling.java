package org.loomproof.network.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.network.law.Threshold;
import org.loomproof.network.netlist.PartFault;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.PartId;

/**
 * Moves contacts until nothing moves. From a stated pattern, all contacts whose drive calls for it move at once, then the
 * voltages are found anew. A pattern met twice means a circle.
 */
final class ContactSettling {
    private final Layout layout;
    private final PointSolver points;
    private int moves;

    ContactSettling(Layout layout, PointSolver points) {
        this.layout = layout;
        this.points = points;
    }

    /** How it ended. */
    sealed interface Ending {
        record AtRest(ContactPattern pattern) implements Ending {}

        record InCircle(ContactPattern entry, List<Integer> moving) implements Ending {}

        record Lost() implements Ending {}
    }

    /** Of all contacts called to move, those that do. */
    private interface Movers {
        ContactPattern next(ContactPattern now, ContactPattern called);
    }

    /** Patterns tried by the last settling. */
    int moves() {
        return moves;
    }

    /** Patterns that may be tried for one setting: enough for every contact to move twice, one after the other. */
    private int bound() {
        return 16 + 2 * layout.thresholds.length;
    }

    /** Settles from this pattern; the setting must have been applied. At rest, the point solver holds the answer. */
    Ending settle(Setting setting, ContactPattern start) {
        return settle(setting, start, (now, called) -> called);
    }

    /** As {@link #settle}, but of all contacts called only one moves at a time, the next from {@code first} on. */
    Ending settleOneByOne(Setting setting, ContactPattern start, int first) {
        return settle(setting, start, (now, called) -> {
            int mover = now.findDifference(called, first);
            return now.withMoved(mover >= 0 ? mover : now.findDifference(called, 0));
        });
    }

    private Ending settle(Setting setting, ContactPattern start, Movers movers) {
        ContactPattern pattern = start;
        List<ContactPattern> met = new ArrayList<>();
        Map<ContactPattern, Integer> metAt = new HashMap<>();
        for (moves = 1; moves <= bound(); moves++) {
            if (!points.solve(pattern)) {
                return new Ending.Lost();
            }
            ContactPattern called = called(setting, pattern);
            if (called.equals(pattern)) {
                return new Ending.AtRest(pattern);
            }
            metAt.put(pattern, met.size());
            met.add(pattern);
            pattern = movers.next(pattern, called);
            Integer circle = metAt.get(pattern);
            if (circle != null) {
                return new Ending.InCircle(pattern, moving(met.subList(circle, met.size())));
            }
        }
        // A circle longer than the bound, as in a long ring: told by what moved in the second half.
        return new Ending.InCircle(pattern, moving(met.subList(met.size() / 2, met.size())));
    }

    /** The pattern to begin with: the one given, but held contacts where they are held. */
    ContactPattern begin(Setting setting, ContactPattern from) {
        return ContactPattern.of(from.count(), t -> held(setting, t, from.isPassed(t)));
    }

    List<PartId> parts(List<Integer> thresholds) {
        return thresholds.stream()
                .map(t -> layout.network.parts().get(layout.thresholdPart[t]).id())
                .toList();
    }

    private ContactPattern called(Setting setting, ContactPattern now) {
        return ContactPattern.of(now.count(), t -> {
            Threshold threshold = layout.thresholds[t];
            double drive = points.thresholdVolts(t);
            boolean free = now.isPassed(t) ? drive > threshold.fallVolts() : drive >= threshold.riseVolts();
            return held(setting, t, free);
        });
    }

    private boolean held(Setting setting, int threshold, boolean free) {
        int part = layout.thresholdPart[threshold];
        if (!layout.isRelay[threshold]) {
            return free;
        }
        if (setting.isHeld(part)) {
            return setting.isHeldPulledIn(part);
        }
        return free && setting.fault(part) == PartFault.NONE;
    }

    private static List<Integer> moving(List<ContactPattern> circle) {
        ContactPattern first = circle.getFirst();
        List<Integer> moving = new ArrayList<>();
        for (int t = 0; t < first.count(); t++) {
            int at = t;
            if (circle.stream().anyMatch(pattern -> pattern.isPassed(at) != first.isPassed(at))) {
                moving.add(t);
            }
        }
        return moving;
    }
}
