package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.explore.Reading;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.quantity.Figures;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.InputReach;
import org.loomproof.workshop.words.Phrase;

/**
 * What the stock vehicle does it still does with the controller idle (disarmed, overridden) and with it dead: each load's
 * current is within a small share of what it was, each factory input reads the same.
 */
final class StockAsBefore implements Claim {

    @Override
    public String name() {
        return "stock-as-before";
    }

    @Override
    public List<Claimed> in(Fitting fitting) {
        List<Claimed> all = new ArrayList<>();
        for (ElementId load : fitting.stock().wired().factory().loads().keySet()) {
            all.add(Limit.stated(
                    fitting,
                    load,
                    StockAsBefore::isIdleAndSettled,
                    limit -> new SameCurrent(name(), load, fitting, limit)));
        }
        for (Map.Entry<ElementId, InputReach> input :
                fitting.stock().wired().factory().inputs().entrySet()) {
            PartId part = input.getValue().part();
            String id = name() + " " + input.getKey();
            Phrase statement =
                    Phrase.of("claim.input-as-before", fitting.stock().wired().words(part));
            all.add(Limit.stated(
                    fitting,
                    input.getKey(),
                    StockAsBefore::isIdleAndSettled,
                    limit -> new SameLevel(id, statement, input.getKey(), part, limit)));
        }
        return all;
    }

    private static boolean isIdleOrDead(ControllerState state, ControllerFeed feed) {
        return feed != ControllerFeed.WHOLE || state == ControllerState.DISARMED || state == ControllerState.OVERRIDE;
    }

    /** A controller that has just unlocked the doors is idle when that pulse is over. */
    private static boolean isIdleAndSettled(Condition.Doing doing) {
        return doing.isSettled() && isIdleOrDead(doing.state(), doing.feed());
    }

    /** A controller that lives on through some other lead although its feed is lost acts as it means to: that is no fault here. */
    private static boolean actsOnPurpose(Pair pair) {
        Condition.Doing doing = pair.doing();
        return pair.fitted().hasController()
                && !isIdleOrDead(doing.state(), ControllerFeed.WHOLE)
                && pair.fitted().aliveByVolts() >= 0;
    }

    private static final class SameCurrent extends ChangedCurrent {

        SameCurrent(String claim, ElementId load, Fitting fitting, Limit limit) {
            super(claim, load, fitting, limit);
        }

        @Override
        public boolean concerns(ControllerState state, ControllerFeed feed) {
            return isIdleOrDead(state, feed);
        }

        @Override
        public boolean concerns(Condition.Doing doing) {
            return isIdleAndSettled(doing);
        }

        @Override
        public double slack(Pair pair) {
            return actsOnPurpose(pair) ? Double.NaN : super.slack(pair);
        }

        @Override
        public Optional<Margin> marginWhereUntouched() {
            return Optional.of(new Margin(
                    ALLOWED_PERCENT,
                    "%",
                    Phrase.of("margin.untouched"),
                    Phrase.of("margin.at-most-percent", Figures.plain(ALLOWED_PERCENT))));
        }
    }

    private record SameLevel(String id, Phrase statement, ElementId input, PartId about, Limit limit) implements Case {

        /** How far an input between its levels may move; common practice, no published source. */
        private static final double BETWEEN_MOVES_VOLTS = 0.1;

        private enum Reads {
            LOW,
            BETWEEN,
            HIGH,
            FLOATS
        }

        @Override
        public boolean concerns(ControllerState state, ControllerFeed feed) {
            return isIdleOrDead(state, feed);
        }

        @Override
        public boolean concerns(Condition.Doing doing) {
            return isIdleAndSettled(doing);
        }

        @Override
        public Optional<Margin> marginWhereUntouched() {
            return Optional.of(new Margin(0, "V", Phrase.of("margin.untouched"), Phrase.of("margin.as-before")));
        }

        private InputReach reach(Reading reading) {
            return Objects.requireNonNull(reading.wired().factory().inputs().get(input));
        }

        private Reads reads(Reading reading) {
            InputReach reach = reach(reading);
            double volts = reading.volts(reach);
            if (reading.isFloating(reach)) {
                return Reads.FLOATS;
            }
            if (volts <= reach.lowBelow()) {
                return Reads.LOW;
            }
            return volts >= reach.highAbove() ? Reads.HIGH : Reads.BETWEEN;
        }

        @Override
        public double slack(Pair pair) {
            if (actsOnPurpose(pair)) {
                return Double.NaN;
            }
            return limit.level(pair)
                    .map(high -> Math.max(held(pair, insideLevel(pair, high)), asBefore(pair)))
                    .orElseGet(() -> asBefore(pair));
        }

        /** How far the volts are inside a level. */
        private double insideLevel(Pair pair, boolean high) {
            InputReach reach = reach(pair.fitted());
            double volts = pair.fitted().volts(reach);
            return high ? volts - reach.highAbove() : reach.lowBelow() - volts;
        }

        private double asBefore(Pair pair) {
            double volts = pair.fitted().volts(reach(pair.fitted()));
            double before = pair.stock().volts(reach(pair.stock()));
            return switch (reads(pair.stock())) {
                case LOW -> held(pair, insideLevel(pair, false));
                case HIGH -> held(pair, insideLevel(pair, true));
                case BETWEEN -> held(pair, BETWEEN_MOVES_VOLTS - Math.abs(volts - before));
                case FLOATS -> reads(pair.fitted()) == Reads.FLOATS ? Double.NaN : -Math.max(Math.abs(volts), 1);
            };
        }

        @Override
        public List<OperableId> asksAbout() {
            return limit.asksAbout();
        }

        private double held(Pair pair, double slack) {
            return reads(pair.fitted()) == Reads.FLOATS ? Double.NEGATIVE_INFINITY : slack;
        }

        @Override
        public Margin margin(Pair pair) {
            InputReach reach = reach(pair.fitted());
            Volts volts = Shown.volts(pair.fitted().volts(reach));
            Phrase allowed = switch (reads(pair.stock())) {
                case LOW -> Phrase.of("margin.input-low", new Volts(reach.lowBelow()));
                case HIGH -> Phrase.of("margin.input-high", new Volts(reach.highAbove()));
                case BETWEEN, FLOATS -> Phrase.of("margin.as-before");
            };
            return new Margin(slack(pair), "V", Phrase.of("margin.wire-shows", volts), allowed);
        }

        @Override
        public List<Observation> observations(Pair pair) {
            Phrase words = pair.fitted().words(about);
            Volts now = Shown.volts(pair.fitted().volts(reach(pair.fitted())));
            Volts before = Shown.volts(pair.stock().volts(reach(pair.stock())));
            return LoadCase.withControllerSupply(
                    pair,
                    new Observation(Phrase.of("meter.volts-at", words), now.toString()),
                    new Observation(Phrase.of("meter.volts-at-before", words), before.toString()));
        }
    }
}
