package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.explore.Reading;
import org.loomproof.workshop.prover.explore.WorkedLoads;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.quantity.Figures;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.wiring.Wired;
import org.loomproof.workshop.words.Phrase;

/**
 * Each connected output does what it is there for: while it is on, an added load gets most of the battery's volts, and the
 * loads of its circuit most of what their own switch would give them.
 */
final class DoesItsWork implements Claim {

    /** The share of its volts at which a load still does its work; common practice, no published source. */
    private static final double LEAST_PERCENT = 85;

    @Override
    public String name() {
        return "does-its-work";
    }

    @Override
    public List<Claimed> in(Fitting fitting) {
        List<Claimed> all = new ArrayList<>();
        for (Hookup hookup : fitting.plan().hookups()) {
            switch (hookup) {
                case Hookup.Connect connect -> {
                    if (isOutput(fitting, connect.lead()) && connect.serves() != Wish.STARTER_INTERRUPT) {
                        all.addAll(connected(fitting, connect));
                    }
                }
                case Hookup.Hold hold -> {
                    if (isOutput(fitting, hold.lead()) && hold.serves() != Wish.STARTER_INTERRUPT) {
                        all.add(Fitting.open(name() + " " + hold.lead(), statement(hold.lead()), hold));
                    }
                }
                case Hookup.Trim trim -> {}
                case Hookup.CapAndKeep cap -> {}
            }
        }
        for (Wish wish : Wish.values()) {
            if (fitting.isWanted(wish) && !isJudgedElsewhere(wish) && !fitting.isServed(wish)) {
                Phrase statement = Phrase.of("claim.wish-works", wish.word());
                all.add(Fitting.open(
                        name() + " " + wish.word(), statement, Phrase.of("open.nothing-serves", wish.word())));
            }
        }
        return all;
    }

    private static boolean isJudgedElsewhere(Wish wish) {
        return wish == Wish.BASICS || wish == Wish.WATCH_OPENINGS || wish == Wish.STARTER_INTERRUPT;
    }

    private static Phrase statement(LeadId lead) {
        return Phrase.of("claim.does-its-work", lead);
    }

    private static boolean isOutput(Fitting fitting, LeadId lead) {
        return fitting.fitted().wired().controller().orElseThrow().outputs().containsKey(lead);
    }

    private List<Claimed> connected(Fitting fitting, Hookup.Connect connect) {
        String id = name() + " " + connect.lead();
        List<Claimed> all = new ArrayList<>();
        Set<ControllerState> onIn = new LinkedHashSet<>();
        for (ControllerState state : ControllerState.values()) {
            if (fitting.brief().kit().behaviour().isOn(connect.lead(), state)) {
                onIn.add(state);
            }
        }
        if (onIn.isEmpty()) {
            return List.of(Fitting.open(id, statement(connect.lead()), Phrase.of("open.never-acts", connect.lead())));
        }
        for (AddedPartId part : connect.parts()) {
            if (fitting.plan()
                    .findPart(part)
                    .filter(AddedPart.Load.class::isInstance)
                    .isPresent()) {
                all.add(new Claimed.ToShow(added(fitting, connect, onIn, part)));
            }
        }
        for (ElementId load : loads(fitting, connect)) {
            all.add(new Claimed.ToShow(factory(fitting, connect, onIn, load)));
        }
        for (ElementId input : named(
                fitting, connect, fitting.stock().wired().factory().inputs().keySet())) {
            PartId about = Objects.requireNonNull(
                            fitting.stock().wired().factory().inputs().get(input))
                    .part();
            Phrase statement = Phrase.of(
                    "claim.factory-load-works", fitting.stock().wired().words(about), connect.lead());
            all.add(new Claimed.ToShow(new WorkedInput(id + " " + input, statement, input, about, Set.copyOf(onIn))));
        }
        if (all.isEmpty()) {
            all.add(Fitting.open(id, statement(connect.lead()), Phrase.of("open.no-load", connect.lead())));
        }
        return all;
    }

    /**
     * The loads that the lead is there to work: of those in its circuits' paths what the circuits' own switches work, or all
     * that they work where none stands in the paths; all in the paths where no switch of the car works any.
     */
    private static List<ElementId> loads(Fitting fitting, Hookup.Connect connect) {
        List<ElementId> named = named(
                fitting, connect, fitting.stock().wired().factory().loads().keySet());
        Set<ElementId> worked = new LinkedHashSet<>();
        connect.circuits().forEach(circuit -> worked.addAll(fitting.loadsWorkedBy(circuit)));
        if (!named.isEmpty()) {
            worked.retainAll(named);
        }
        return worked.isEmpty() ? named : List.copyOf(worked);
    }

    /** Those of the elements that stand in the paths of the circuits the lead acts on. */
    private static List<ElementId> named(Fitting fitting, Hookup.Connect connect, Set<ElementId> among) {
        Set<ElementId> loads = new LinkedHashSet<>();
        for (CircuitId circuit : connect.circuits()) {
            for (List<PathStep> path : fitting.brief().sheet().circuit(circuit).paths()) {
                for (PathStep step : path) {
                    if (step instanceof PathStep.Part part && among.contains(part.id())) {
                        loads.add(part.id());
                    }
                }
            }
        }
        return List.copyOf(loads);
    }

    private Work added(Fitting fitting, Hookup.Connect connect, Set<ControllerState> onIn, AddedPartId part) {
        Wired wired = fitting.fitted().wired();
        PartId about = Objects.requireNonNull(wired.added().parts().get(part)).part();
        Phrase statement = Phrase.of("claim.added-load-works", wired.words(about), connect.lead());
        return new Work(name() + " " + connect.lead() + " " + part, statement, about, onIn) {
            @Override
            Reach reach(Reading fittedReading) {
                return Objects.requireNonNull(
                        fittedReading.wired().added().parts().get(part));
            }

            @Override
            double wholeVolts(Pair pair) {
                return pair.supply().volts().value();
            }
        };
    }

    private Work factory(Fitting fitting, Hookup.Connect connect, Set<ControllerState> onIn, ElementId load) {
        Wired wired = fitting.stock().wired();
        Reach stockReach = Objects.requireNonNull(wired.factory().loads().get(load));
        PartId about = stockReach.part();
        Phrase statement = Phrase.of("claim.factory-load-works", wired.words(about), connect.lead());
        return new Work(name() + " " + connect.lead() + " " + load, statement, about, onIn) {
            @Override
            Reach reach(Reading fittedReading) {
                return Objects.requireNonNull(
                        fittedReading.wired().factory().loads().get(load));
            }

            @Override
            OptionalDouble ownVolts(Pair pair) {
                double least = WorkedLoads.LEAST_SHARE * pair.supply().volts().value();
                return connect.circuits().stream()
                        .map(circuit -> pair.working().worked(circuit, load, pair.supply()))
                        .filter(own -> own.isPresent() && Math.abs(own.getAsDouble()) > least)
                        .findFirst()
                        .orElse(OptionalDouble.empty());
            }

            @Override
            double byHandVolts(Pair pair) {
                return pair.stock().volts(stockReach);
            }

            // Where no switch of the car ever works the load, the battery's volts stand in.
            @Override
            double wholeVolts(Pair pair) {
                double most = pair.working().volts(pair.supply(), load);
                double supply = pair.supply().volts().value();
                return most < 0.1 * supply ? supply : most;
            }
        };
    }

    private abstract static class Work implements Case {

        private final String id;
        private final Phrase statement;
        private final PartId about;
        private final Set<ControllerState> onIn;

        Work(String id, Phrase statement, PartId about, Set<ControllerState> onIn) {
            this.id = id;
            this.statement = statement;
            this.about = about;
            this.onIn = Set.copyOf(onIn);
        }

        abstract Reach reach(Reading fitted);

        abstract double wholeVolts(Pair pair);

        /** What the circuit's own switch gives the load, with its sign: a motor must run the same way round. */
        OptionalDouble ownVolts(Pair pair) {
            return OptionalDouble.empty();
        }

        /** What somebody's hand on the car's own switches gives the load here. */
        double byHandVolts(Pair pair) {
            return 0;
        }

        @Override
        public String id() {
            return id;
        }

        @Override
        public Phrase statement() {
            return statement;
        }

        @Override
        public PartId about() {
            return about;
        }

        @Override
        public boolean concerns(ControllerState state, ControllerFeed feed) {
            return feed == ControllerFeed.WHOLE && onIn.contains(state);
        }

        @Override
        public boolean concerns(Condition.Doing doing) {
            return doing.moment() == Moment.ACTING && concerns(doing.state(), doing.feed());
        }

        private double volts(Pair pair) {
            return Math.abs(pair.fitted().volts(reach(pair.fitted())));
        }

        private double percent(Pair pair) {
            OptionalDouble own = ownVolts(pair);
            return 100
                    * (own.isPresent()
                            ? pair.fitted().volts(reach(pair.fitted())) / own.getAsDouble()
                            : volts(pair) / wholeVolts(pair));
        }

        /** A hand that works the load the other way has the last word, whatever the output does. */
        private boolean isOverruledByHand(Pair pair) {
            OptionalDouble own = ownVolts(pair);
            return own.isPresent() && byHandVolts(pair) / own.getAsDouble() < -0.1;
        }

        @Override
        public double slack(Pair pair) {
            return isOverruledByHand(pair) ? Double.NaN : percent(pair) - LEAST_PERCENT;
        }

        @Override
        public Margin margin(Pair pair) {
            return new Margin(
                    slack(pair),
                    "%",
                    Phrase.of("margin.gets-share", Shown.volts(volts(pair)), Figures.plain(percent(pair))),
                    Phrase.of("margin.at-least-percent", Figures.plain(LEAST_PERCENT), Shown.volts(wholeVolts(pair))));
        }

        @Override
        public List<Observation> observations(Pair pair) {
            return LoadCase.withControllerSupply(
                    pair,
                    new Observation(
                            Phrase.of("meter.volts-across", pair.fitted().words(about)),
                            Shown.volts(volts(pair)).toString()));
        }
    }
}
