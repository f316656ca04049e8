package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.kit.Behaviour;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.prover.explore.Area;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.CurrentPath;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.explore.Ways;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.words.Phrase;

/**
 * Current never flows the unintended way: while the controller acts no load works but those that the outputs on then are there
 * for, and no fuse or contact that several loads may share carries current the other way round than it ever does in the stock
 * vehicle. What is found is told with its way from the battery and back.
 */
final class NoSneakPath implements Claim {

    /** Less than this through a contact works nothing: some signal is read, at most. Common practice, no published source. */
    private static final double LEAST_AMPS = 0.01;

    @Override
    public String name() {
        return "no-sneak-path";
    }

    @Override
    public List<Claimed> in(Fitting fitting) {
        Set<PartId> touched = new HashSet<>();
        Area.list(fitting.stock().wired(), fitting.fitted().wired()).stream()
                .filter(Area::touched)
                .forEach(area -> touched.addAll(area.parts()));
        Map<ElementId, Set<LeadId>> meant = meant(fitting);
        List<Claimed> all = new ArrayList<>();
        fitting.stock().wired().factory().loads().forEach((load, reach) -> {
            if (touched.contains(reach.part())) {
                Aside aside = new Aside(fitting.brief().kit().behaviour(), meant.getOrDefault(load, Set.of()));
                all.add(Limit.stated(
                        fitting,
                        load,
                        aside::concerns,
                        limit -> new OnlyWhatIsMeant(name(), load, fitting, aside, limit)));
            }
        });
        for (PartId shared : Ways.shared(fitting.stock().wired())) {
            if (touched.contains(shared)) {
                Phrase words = fitting.stock().wired().words(shared);
                all.add(new Claimed.ToShow(new NeverBackwards(
                        name() + " " + Coils.name(fitting, shared),
                        Phrase.of("claim.never-backwards", words),
                        shared)));
            }
        }
        return all;
    }

    /**
     * The leads that are there to work each load, or to keep it from work: all that serve the same wish, since what locks a door
     * also ends its unlocking.
     */
    private static Map<ElementId, Set<LeadId>> meant(Fitting fitting) {
        Map<ElementId, Set<LeadId>> meant = new HashMap<>();
        for (Wish wish : Wish.values()) {
            List<Hookup.Connect> acting = fitting.connected(wish).stream()
                    .filter(connect -> DoesItsWork.isOutput(fitting, connect.lead()))
                    .toList();
            Set<LeadId> leads = acting.stream().map(Hookup.Connect::lead).collect(Collectors.toSet());
            loads(fitting, wish, acting)
                    .forEach(load ->
                            meant.computeIfAbsent(load, l -> new HashSet<>()).addAll(leads));
        }
        return meant;
    }

    private static List<ElementId> loads(Fitting fitting, Wish wish, List<Hookup.Connect> acting) {
        return wish == Wish.STARTER_INTERRUPT && !acting.isEmpty()
                ? fitting.loadsBehind(StarterCut.circuits(fitting))
                : acting.stream()
                        .flatMap(connect -> DoesItsWork.loads(fitting, connect).stream())
                        .toList();
    }

    /** While a fed controller does nothing that is there to work one load, or to keep it from work. */
    private record Aside(Behaviour behaviour, Set<LeadId> meant) {

        Aside {
            meant = Set.copyOf(meant);
        }

        boolean concerns(Condition.Doing doing) {
            return doing.feed() == ControllerFeed.WHOLE && Collections.disjoint(meant, doing.on(behaviour));
        }
    }

    private static final class OnlyWhatIsMeant extends ChangedCurrent {

        private final Aside aside;

        OnlyWhatIsMeant(String claim, ElementId load, Fitting fitting, Aside aside, Limit limit) {
            super(claim, load, fitting, limit);
            this.aside = aside;
        }

        @Override
        public boolean concerns(ControllerState state, ControllerFeed feed) {
            return feed == ControllerFeed.WHOLE;
        }

        @Override
        public boolean concerns(Condition.Doing doing) {
            return aside.concerns(doing);
        }

        @Override
        public boolean fallsAwayUnasked() {
            return true;
        }
    }

    private record NeverBackwards(String id, Phrase statement, PartId about) implements Case {

        @Override
        public boolean concerns(ControllerState state, ControllerFeed feed) {
            return true;
        }

        @Override
        public boolean fallsAwayUnasked() {
            return true;
        }

        private double mostAmps(Pair pair) {
            return Math.max(LEAST_AMPS, ChangedCurrent.ALLOWED_PERCENT / 100 * usualAmps(pair));
        }

        private double usualAmps(Pair pair) {
            return Math.max(pair.working().mostAmps(about, true), pair.working().mostAmps(about, false));
        }

        /** What it carries against its usual way; not a number where it has none, or both. */
        private double strayAmps(Pair pair) {
            double forwards = pair.working().mostAmps(about, true);
            double backwards = pair.working().mostAmps(about, false);
            double amps = pair.fitted().point().amps(about);
            boolean oneWay = Math.min(forwards, backwards) < LEAST_AMPS && usualAmps(pair) >= LEAST_AMPS;
            return oneWay ? Math.max(0, forwards > backwards ? -amps : amps) : Double.NaN;
        }

        @Override
        public double slack(Pair pair) {
            return mostAmps(pair) - strayAmps(pair);
        }

        @Override
        public Margin margin(Pair pair) {
            return new Margin(
                    slack(pair),
                    "A",
                    Phrase.of("margin.carries-backwards", Shown.amps(strayAmps(pair))),
                    Phrase.of("margin.at-most-amps", Shown.amps(mostAmps(pair))));
        }

        @Override
        public List<Observation> observations(Pair pair) {
            return List.of(
                    new Observation(
                            Phrase.of("meter.amps-backwards", pair.fitted().words(about)),
                            Shown.amps(strayAmps(pair)).toString()),
                    CurrentPath.observed(pair.fitted(), about));
        }
    }
}
