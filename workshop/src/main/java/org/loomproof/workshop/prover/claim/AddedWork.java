package org.loomproof.workshop.prover.claim;

import java.util.List;
import java.util.Objects;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.explore.Reading;
import org.loomproof.workshop.prover.verdict.Severity;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.wiring.Wired;
import org.loomproof.workshop.words.Phrase;

/** An added load gets most of the battery's volts while its output is on. */
final class AddedWork extends Work {

    private final AddedPartId part;
    private final List<FactoryWork> beside;
    private final boolean warns;

    AddedWork(
            String claim,
            Fitting fitting,
            Hookup.Connect connect,
            Acting acting,
            AddedPartId part,
            List<FactoryWork> beside,
            String says) {
        super(
                claim + " " + part,
                Phrase.of(
                        says,
                        fitting.fitted()
                                .wired()
                                .words(reach(fitting.fitted().wired(), part).part()),
                        connect.lead()),
                reach(fitting.fitted().wired(), part).part(),
                acting);
        this.part = part;
        this.beside = List.copyOf(beside);
        this.warns = acting.onIn().contains(ControllerState.SOUNDING);
    }

    private static Reach reach(Wired wired, AddedPartId part) {
        return Objects.requireNonNull(wired.added().parts().get(part));
    }

    /** What follows the car's own motors is overruled with them. */
    @Override
    boolean isOverruledByHand(Pair pair) {
        return beside.stream().anyMatch(work -> work.isOverruledByHand(pair));
    }

    @Override
    Reach reach(Reading fitted) {
        return reach(fitted.wired(), part);
    }

    @Override
    double wholeVolts(Pair pair) {
        return pair.supplyVolts();
    }

    @Override
    public Severity severity(Pair pair) {
        return warns ? Severity.UNPROTECTED : Severity.NUISANCE;
    }
}
