package org.loomproof.workshop.fault;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.words.Phrase;

/** One thing that is not as the plan says. */
public sealed interface Mishap permits Fault, Slip {

    /** Stable, made of what is wrong and of names in the plan, such as {@code wire-open W3}. */
    String id();

    /** What sort of thing is wrong, such as {@code wire-open}. */
    String kind();

    /** The wires, parts, leads and circuits that it is about. */
    List<Object> names();

    /** What is wrong, in words. */
    Phrase words();

    /** How it is found by looking, for those that no test of the finished car notices. */
    Phrase inspection();

    /** Every mishap that is listed for a plan: faults first, then slips, each in the plan's order. */
    static List<Mishap> list(Brief brief, Plan plan) {
        List<Mishap> all = new ArrayList<>(Faults.list(brief.kit(), plan));
        all.addAll(Slips.list(brief, plan));
        return List.copyOf(all);
    }
}
