package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.prover.state.StepsTo;
import org.loomproof.workshop.prover.verdict.Assumption;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.prover.verdict.Witness;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.words.Phrase;

/**
 * A claim that figures decide, without a walk through situations: broken where the typical figures break it, open where only
 * their worse ends do, and else it holds with the margin that it has there.
 *
 * @param id of the result
 * @param statement the claim in words
 * @param figures those it rests on, with what to read or ask for
 * @param planDecides false where no plan changes any of them
 */
record ByFigures(String id, Phrase statement, List<Used> figures, boolean planDecides) {

    /** A figure with what would settle it. */
    record Used(Figure<?> figure, Measurement settledBy) {}

    ByFigures {
        figures = List.copyOf(figures);
    }

    /** The verdict by the margin that typical figures leave and by that which their worse ends leave. */
    Claimed decide(Margin typical, Margin worst, Situation at, List<Phrase> steps, Observation seen) {
        if (!typical.isKept()) {
            return result(new Verdict.Broken(typical, new Witness(steps, at, List.of(seen))));
        }
        return result(worst.isKept() ? new Verdict.Holds(worst, at) : open());
    }

    /** What is left open because a figure is missing. */
    static Claimed missing(String id, Phrase statement, Measurement settledBy) {
        Verdict open = new Verdict.Open(Phrase.of("open.not-said", settledBy.what()), List.of(settledBy));
        return new Claimed.Decided(new ClaimResult(id, statement, open, List.of(), false));
    }

    /** A figure that only the kit's maker knows. */
    static Measurement askFor(String name, Phrase what) {
        return new Measurement("figure-of " + name, what);
    }

    private Claimed result(Verdict verdict) {
        List<Assumption> restsOn = figures.stream()
                .filter(used -> used.figure().isAssumed())
                .map(used -> new Assumption(
                        used.figure().basis().place().path(),
                        used.figure().low().toString(),
                        used.figure().high().toString(),
                        used.settledBy()))
                .toList();
        return new Claimed.Decided(new ClaimResult(id, statement, verdict, restsOn, planDecides));
    }

    private Verdict open() {
        List<Used> ranged =
                figures.stream().filter(used -> used.figure().isRange()).toList();
        return new Verdict.Open(
                Phrase.of(
                        "open.flips",
                        ranged.stream()
                                .map(used -> Phrase.of(
                                        "measure.range",
                                        used.settledBy().what(),
                                        used.figure().low(),
                                        used.figure().high()))
                                .toList()),
                ranged.stream().map(Used::settledBy).toList());
    }

    /** Everything at rest, a charged battery, the controller in that state. */
    static Situation atRest(ControllerState state, Moment moment) {
        return new Situation(new TreeMap<>(), SupplyPoint.REST, state, ControllerFeed.WHOLE, moment);
    }

    /** Everything at rest but the key, the controller disarmed. */
    static Situation withKey(String position, SupplyPoint supply) {
        return new Situation(
                new TreeMap<>(Map.of(Operable.KEY, position)),
                supply,
                ControllerState.DISARMED,
                ControllerFeed.WHOLE,
                Moment.SETTLED);
    }

    /** The steps to there, and one more. */
    static List<Phrase> steps(Fitting fitting, Situation at, Phrase last) {
        List<Phrase> steps = new ArrayList<>(
                new StepsTo(fitting.brief().sheet(), fitting.brief().kit()).list(at));
        steps.add(last);
        return steps;
    }
}
