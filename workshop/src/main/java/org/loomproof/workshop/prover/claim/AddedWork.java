package org.loomproof.workshop.prover.claim;

import java.util.Objects;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.explore.Reading;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.wiring.Wired;
import org.loomproof.workshop.words.Phrase;

/** An added load gets most of the battery's volts while its output is on. */
final class AddedWork extends Work {

    private final AddedPartId part;

    AddedWork(String claim, Fitting fitting, Hookup.Connect connect, Acting acting, AddedPartId part) {
        super(
                claim + " " + part,
                Phrase.of(
                        "claim.added-load-works",
                        fitting.fitted()
                                .wired()
                                .words(reach(fitting.fitted().wired(), part).part()),
                        connect.lead()),
                reach(fitting.fitted().wired(), part).part(),
                acting);
        this.part = part;
    }

    private static Reach reach(Wired wired, AddedPartId part) {
        return Objects.requireNonNull(wired.added().parts().get(part));
    }

    @Override
    Reach reach(Reading fitted) {
        return reach(fitted.wired(), part);
    }

    @Override
    double wholeVolts(Pair pair) {
        return pair.supply().volts().value();
    }
}
