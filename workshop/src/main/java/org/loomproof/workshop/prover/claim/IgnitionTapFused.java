package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.prover.verdict.Residual;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.prover.verdict.Witness;
import org.loomproof.workshop.quantity.Figures;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.trade.fuse.Fuses;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/**
 * A short of anything that was added must not take the ignition away from a running engine: every tap on it has a fuse of its
 * own close by, which opens before the factory's.
 */
public final class IgnitionTapFused implements Claim {

    private static final Situation KEY_ON = ByFigures.withKey(Operable.KEY_POSITIONS.get(2), SupplyPoint.REST);

    @Override
    public String name() {
        return "ignition-tap-fused";
    }

    @Override
    public boolean isWalked() {
        return false;
    }

    @Override
    public List<Claimed> in(Fitting fitting) {
        List<Claimed> all = new ArrayList<>();
        for (IgnitionTap tap : IgnitionTap.list(fitting)) {
            Phrase statement = Phrase.of("claim.ignition-tap-fused", tap.wire().id(), tap.circuit());
            all.add(new Claimed.Decided(
                    new ClaimResult(name() + " " + tap.wire().id(), statement, verdict(fitting, tap), List.of())));
            residual(fitting, tap).ifPresent(all::add);
        }
        return all;
    }

    /** The piece of wire before each such fuse: what is left that no fuse of the plan guards. */
    private static Optional<Claimed> residual(Fitting fitting, IgnitionTap tap) {
        return tap.fuse(fitting)
                .map(fuse -> new Claimed.Left(new Residual(
                        "stub " + tap.wire().id(),
                        Phrase.of("residual.stub", tap.wire().id(), tap.wire().length(), tap.circuit(), fuse.id()))));
    }

    private static Verdict verdict(Fitting fitting, IgnitionTap tap) {
        Optional<AddedPart.Fuse> fuse = tap.fuse(fitting);
        if (fuse.isEmpty()) {
            return broken(
                    fitting,
                    new Margin(-1, "", Phrase.of("margin.no-own-fuse"), Phrase.of("margin.fuse-within", most())),
                    tap);
        }
        double length = tap.wire().length().value();
        if (length > most().value()) {
            Margin tooFar = new Margin(
                    most().value() - length,
                    "m",
                    Phrase.of("margin.fuse-after", tap.wire().length()),
                    Phrase.of("margin.fuse-within", most()));
            return broken(fitting, tooFar, tap);
        }
        return selective(fitting, tap, fuse.get());
    }

    private static Metres most() {
        return Fuses.takeOffLength();
    }

    private static Verdict selective(Fitting fitting, IgnitionTap tap, AddedPart.Fuse fuse) {
        Optional<List<FactoryFuse>> before = tap.factoryFuses(fitting, fuse);
        if (before.isEmpty()) {
            return new Verdict.Open(Phrase.of("outcome.lost"), List.of());
        }
        Optional<FactoryFuse> least = before.get().stream()
                .min(Comparator.comparingDouble(each -> each.rating().low().value()));
        return least.map(factory -> selective(fitting, tap, fuse, factory))
                .orElseGet(() -> new Verdict.Holds(alone(tap), KEY_ON));
    }

    /** The sheet draws no other fuse: what is left is how near its own is. */
    private static Margin alone(IgnitionTap tap) {
        Metres length = tap.wire().length();
        return new Margin(
                most().value() - length.value(),
                "m",
                Phrase.of("margin.only-fuse-after", length),
                Phrase.of("margin.fuse-within", most()));
    }

    private static Verdict selective(Fitting fitting, IgnitionTap tap, AddedPart.Fuse fuse, FactoryFuse factory) {
        double own = fuse.rating().value();
        if (factory.rating().typical().value() < own) {
            return broken(
                    fitting, margin(fuse, factory, factory.rating().typical().value() / own), tap);
        }
        Margin worst = margin(fuse, factory, factory.rating().low().value() / own);
        return worst.isKept()
                ? new Verdict.Holds(worst, KEY_ON)
                : new Verdict.Open(
                        Phrase.of("open.not-selective", worst.computed(), worst.allowed()),
                        List.of(factory.read("measure.fuse-curve")));
    }

    private static Margin margin(AddedPart.Fuse fuse, FactoryFuse factory, double ratio) {
        return new Margin(
                ratio - Selectivity.leastRatio(),
                "×",
                Phrase.of(
                        "margin.fuse-ratio",
                        fuse.id(),
                        fuse.rating(),
                        factory.words(),
                        factory.rating().low(),
                        Figures.plain(ratio)),
                Phrase.of("margin.least-fuse-ratio", Figures.plain(Selectivity.leastRatio())));
    }

    private static Verdict.Broken broken(Fitting fitting, Margin margin, IgnitionTap tap) {
        Phrase follow = Phrase.of("step.follow-wire", tap.wire().id(), tap.circuit());
        Observation seen = new Observation(
                Phrase.of("meter.wire-to-its-fuse", tap.wire().id()),
                tap.wire().length().toString());
        return new Verdict.Broken(margin, new Witness(ByFigures.steps(fitting, KEY_ON, follow), KEY_ON, List.of(seen)));
    }
}
