package org.loomproof.workshop.goods.change;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;

/** How a lead is joined, without the numbers that parts and wires happen to have in a plan. */
final class Trace {

    private Trace() {}

    /** The decision and, for a joined lead, every wire with what stands at its ends; sorted. */
    static List<String> of(Plan plan, Hookup hookup) {
        List<String> trace = new ArrayList<>();
        if (hookup instanceof Hookup.Connect connect) {
            plan.wires().stream()
                    .filter(wire -> connect.wires().contains(wire.id()))
                    .map(wire -> wire(plan, wire))
                    .sorted()
                    .forEach(trace::add);
        }
        if (hookup instanceof Hookup.Hold hold) {
            trace.add(hold.until().name());
        }
        trace.addFirst(hookup.getClass().getSimpleName());
        return trace;
    }

    private static String wire(Plan plan, AddedWire wire) {
        String one = end(plan, wire.from());
        String other = end(plan, wire.to());
        String ends = one.compareTo(other) <= 0 ? one + " - " + other : other + " - " + one;
        return ends + " " + wire.length() + " " + wire.size();
    }

    private static String end(Plan plan, End end) {
        return end instanceof End.OfPart(var id, var terminal)
                ? plan.findPart(id).map(Trace::part).orElse("") + " " + terminal
                : end.toString();
    }

    /** The part's figures without its name. */
    private static String part(AddedPart part) {
        AddedPartId id = part.id();
        return part.toString().replace(id.toString(), "").replace("AddedPartId[value=]", "");
    }
}
