package org.loomproof.workshop.goods.change;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;

/** One thing to undo in the car, in the order in which it is safe: the cut is made whole before anything is taken from it. */
public sealed interface Undo {

    /** A cut factory wire is joined again, as it was, and insulated. */
    record RejoinCut(CircuitId circuit) implements Undo {}

    /** A joint is taken off a factory wire, and the wire insulated. */
    record TakeOffTap(CircuitId circuit) implements Undo {}

    /** A part of a lead is taken out, with its wires. */
    record TakeOutPart(AddedPartId part, LeadId lead) implements Undo {}

    /** What the old plan did to factory wires and the new one does not, and the parts of leads that change. */
    static List<Undo> list(Plan before, Plan after) {
        List<Undo> undo = new ArrayList<>();
        Set<CircuitId> cuts = cuts(before);
        cuts.removeAll(cuts(after));
        cuts.forEach(circuit -> undo.add(new RejoinCut(circuit)));
        Set<CircuitId> taps = taps(before);
        taps.removeAll(taps(after));
        taps.forEach(circuit -> undo.add(new TakeOffTap(circuit)));
        Set<AddedPartId> seen = new LinkedHashSet<>();
        for (Hookup hookup : before.hookups()) {
            boolean same = after.findHookup(hookup.lead())
                    .filter(next -> Trace.of(after, next).equals(Trace.of(before, hookup)))
                    .isPresent();
            if (hookup instanceof Hookup.Connect connect && !same) {
                connect.parts().stream()
                        .filter(part -> !isStillUsed(before, after, part))
                        .filter(seen::add)
                        .forEach(part -> undo.add(new TakeOutPart(part, connect.lead())));
            }
        }
        return undo;
    }

    /** True when a lead that does not change hangs on the part as well. */
    private static boolean isStillUsed(Plan before, Plan after, AddedPartId part) {
        return before.hookups().stream()
                .anyMatch(hookup -> hookup instanceof Hookup.Connect connect
                        && connect.parts().contains(part)
                        && after.findHookup(hookup.lead())
                                .filter(next -> Trace.of(after, next).equals(Trace.of(before, hookup)))
                                .isPresent());
    }

    private static Set<CircuitId> cuts(Plan plan) {
        Set<CircuitId> cuts = new TreeSet<>();
        ends(plan).forEach(end -> {
            if (end instanceof End.CutBefore(var circuit)) {
                cuts.add(circuit);
            } else if (end instanceof End.CutAfter(var circuit)) {
                cuts.add(circuit);
            }
        });
        return cuts;
    }

    private static Set<CircuitId> taps(Plan plan) {
        Set<CircuitId> taps = new TreeSet<>();
        ends(plan).forEach(end -> {
            if (end instanceof End.Tap(var circuit)) {
                taps.add(circuit);
            }
        });
        return taps;
    }

    private static List<End> ends(Plan plan) {
        List<End> ends = new ArrayList<>();
        for (AddedWire wire : plan.wires()) {
            ends.add(wire.from());
            ends.add(wire.to());
        }
        return ends;
    }
}
