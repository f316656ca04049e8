package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.prover.claim.Triggers.Trigger;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.prover.verdict.Severity;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.words.Phrase;

/**
 * Each watched opening is noticed when armed, and stays noticed while the controller warns, so that the alarm follows: some trigger
 * input is surely read as active, whatever else is set and whatever a warning switches on.
 */
public final class OpeningSeen implements Claim {

    /** What its results' ids begin with. */
    public static final String NAME = "opening-seen";

    private static final Set<ControllerState> WATCHING = EnumSet.of(ControllerState.ARMED, ControllerState.WARNING);

    private static final String OPEN = Operable.OPENING_POSITIONS.getLast();

    @Override
    public String name() {
        return NAME;
    }

    /** The id of what it says of an opening. */
    public static String idOf(OperableId opening) {
        return NAME + " " + opening;
    }

    @Override
    public List<Claimed> in(Fitting fitting) {
        List<Trigger> triggers = Triggers.list(fitting);
        List<Hookup.Hold> holds = fitting.onHold(Wish.WATCH_OPENINGS);
        boolean served = !fitting.connected(Wish.WATCH_OPENINGS).isEmpty();
        List<Claimed> all = new ArrayList<>();
        if (!fitting.isWanted(Wish.WATCH_OPENINGS)) {
            return all;
        }
        for (OperableId opening : fitting.brief().order().watched()) {
            String id = idOf(opening);
            Phrase statement = Phrase.of("claim.opening-seen", opening);
            if (triggers.isEmpty() || (!served && holds.isEmpty())) {
                all.add(Fitting.open(id, statement, Phrase.of("open.nothing-serves", Wish.WATCH_OPENINGS.word())));
            } else if (!served) {
                all.add(Fitting.open(id, statement, holds.getFirst()));
            } else {
                List<LeadId> tooSlow = HeldLongEnough.tooSlow(fitting, opening);
                List<Trigger> inTime = triggers.stream()
                        .filter(trigger -> !tooSlow.contains(trigger.lead()))
                        .toList();
                all.add(new Claimed.ToShow(new SeenCase(id, statement, opening, inTime, fitting, holds)));
            }
        }
        return all;
    }

    private record SeenCase(
            String id,
            Phrase statement,
            OperableId opening,
            List<Trigger> triggers,
            PartId about,
            List<Hookup.Hold> waitsFor)
            implements Case {

        SeenCase(
                String id,
                Phrase statement,
                OperableId opening,
                List<Trigger> triggers,
                Fitting fitting,
                List<Hookup.Hold> waitsFor) {
            this(
                    id,
                    statement,
                    opening,
                    triggers,
                    fitting.fitted().wired().controller().orElseThrow().inputs().values().stream()
                            .findFirst()
                            .orElseThrow()
                            .part(),
                    waitsFor);
        }

        @Override
        public boolean concerns(ControllerState state, ControllerFeed feed) {
            return WATCHING.contains(state) && feed == ControllerFeed.WHOLE;
        }

        @Override
        public boolean concerns(Map<OperableId, String> positions) {
            return OPEN.equals(positions.get(opening));
        }

        @Override
        public List<OperableId> asksAbout() {
            return List.of(opening);
        }

        @Override
        public double slack(Pair pair) {
            double alive = pair.fitted().aliveByVolts();
            if (alive < 0) {
                return alive; // a controller without supply notices nothing
            }
            double best = Double.NEGATIVE_INFINITY;
            for (Trigger trigger : triggers) {
                best = Math.max(best, trigger.activeBy(pair.fitted()));
            }
            return best;
        }

        @Override
        public Severity severity(Pair pair) {
            return Severity.UNPROTECTED;
        }

        private Trigger clearest(Pair pair) {
            return triggers.stream()
                    .max(Comparator.comparingDouble(t -> t.activeBy(pair.fitted())))
                    .orElseThrow();
        }

        @Override
        public Margin margin(Pair pair) {
            if (pair.fitted().aliveByVolts() < 0) {
                return TriggerWords.dead(pair.fitted());
            }
            Trigger clearest = clearest(pair);
            double slack = slack(pair);
            return new Margin(
                    slack,
                    "V",
                    Phrase.of(
                            slack < 0 ? "margin.no-input-reads" : "margin.input-reads",
                            clearest.lead(),
                            Shown.volts(clearest.volts(pair.fitted()))),
                    TriggerWords.active(clearest, pair.fitted()));
        }

        @Override
        public List<Observation> observations(Pair pair) {
            List<Observation> seen = new ArrayList<>();
            triggers.forEach(t -> seen.add(TriggerWords.observation(t, pair.fitted())));
            seen.addAll(LoadCase.controllerSupply(pair));
            return seen;
        }

        @Override
        public List<Hookup.Hold> mayBeSettledBy() {
            return waitsFor;
        }
    }
}
