package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.JoinedCircuits;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.words.Phrase;

/** What the three claims about starting are about: the loads behind the wires that are cut for the starter interrupt. */
public final class StarterCut {

    private StarterCut() {}

    /** One case a load, or what is open because a lead waits or nothing serves the wish. */
    static List<Claimed> cases(Claim claim, Fitting fitting, Function<ElementId, Case> made) {
        List<Claimed> all = new ArrayList<>();
        for (Hookup.Hold hold : fitting.onHold(Wish.STARTER_INTERRUPT)) {
            all.add(Fitting.open(claim.name() + " " + hold.lead(), statement(claim), hold));
        }
        for (ElementId load : fitting.loadsBehind(circuits(fitting))) {
            all.add(new Claimed.ToShow(made.apply(load)));
        }
        if (all.isEmpty() && fitting.isWanted(Wish.STARTER_INTERRUPT)) {
            String id = claim.name() + " " + Wish.STARTER_INTERRUPT.word();
            all.add(Fitting.open(
                    id, statement(claim), Phrase.of("open.nothing-serves", Wish.STARTER_INTERRUPT.word())));
        }
        return all;
    }

    private static Phrase statement(Claim claim) {
        return Phrase.of("claim." + claim.name(), Phrase.of("claim.the-starter"));
    }

    /** The circuits cut for the wish; where none is cut, all that its leads act on. */
    public static Set<CircuitId> circuits(Fitting fitting) {
        Set<CircuitId> actedOn = new LinkedHashSet<>();
        fitting.connected(Wish.STARTER_INTERRUPT).forEach(c -> actedOn.addAll(c.circuits()));
        Set<CircuitId> cut = new LinkedHashSet<>(JoinedCircuits.cut(fitting.plan()));
        cut.retainAll(actedOn);
        return cut.isEmpty() ? actedOn : cut;
    }
}
