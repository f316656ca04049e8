package org.loomproof.workshop.prover.claim;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Switch;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.prover.explore.Area;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.CurrentPath;
import org.loomproof.workshop.prover.explore.Pair;
import org.loomproof.workshop.prover.explore.Reading;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.verdict.Margin;
import org.loomproof.workshop.prover.verdict.Observation;
import org.loomproof.workshop.prover.verdict.Severity;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.words.Phrase;

/**
 * Current never flows the unintended way: while the controller acts no load works but those that its output is there for, and
 * no contact that several loads may share carries current the other way round than it ever does in the stock vehicle. What is
 * found is told with the path from the battery.
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
        Map<ElementId, List<Acting>> meant = meant(fitting);
        List<Claimed> all = new ArrayList<>();
        fitting.stock().wired().factory().loads().forEach((load, reach) -> {
            if (touched.contains(reach.part())) {
                all.add(new Claimed.ToShow(
                        new OnlyWhatIsMeant(name(), load, fitting, meant.getOrDefault(load, List.of()))));
            }
        });
        fitting.stock().wired().switches().stream()
                .map(contact -> contact.part())
                .distinct()
                .filter(touched::contains)
                .filter(contact -> fitting.stock().wired().network().part(contact) instanceof Switch)
                .forEach(contact -> all.add(new Claimed.ToShow(new NeverBackwards(
                        name() + " " + Coils.name(fitting, contact),
                        Phrase.of(
                                "claim.never-backwards",
                                fitting.stock().wired().words(contact)),
                        contact))));
        return all;
    }

    /** When each load is meant to be worked, or kept from work, by what is connected. */
    private static Map<ElementId, List<Acting>> meant(Fitting fitting) {
        Map<ElementId, List<Acting>> meant = new LinkedHashMap<>();
        for (Hookup.Connect connect : fitting.connected()) {
            if (DoesItsWork.isOutput(fitting, connect.lead())) {
                Acting acting = Acting.of(fitting.brief().kit().behaviour(), connect.lead());
                List<ElementId> loads = connect.serves() == Wish.STARTER_INTERRUPT
                        ? fitting.loadsBehind(StarterCut.circuits(fitting))
                        : DoesItsWork.loads(fitting, connect);
                loads.forEach(load ->
                        meant.computeIfAbsent(load, l -> new ArrayList<>()).add(acting));
            }
        }
        return meant;
    }

    private static boolean acts(ControllerState state, ControllerFeed feed) {
        return feed == ControllerFeed.WHOLE && state != ControllerState.WITHOUT_SUPPLY;
    }

    private static Observation path(Reading fitted, PartId through) {
        return new Observation(Phrase.of("meter.path", CurrentPath.through(fitted, through)), "");
    }

    private static final class OnlyWhatIsMeant extends LoadCase {

        private final List<Acting> meant;

        OnlyWhatIsMeant(String claim, ElementId load, Fitting fitting, List<Acting> meant) {
            super(claim, load, fitting);
            this.meant = List.copyOf(meant);
        }

        @Override
        public boolean concerns(ControllerState state, ControllerFeed feed) {
            return acts(state, feed);
        }

        /** Some doings stand for others to the same effect: what any lead on then is there for is meant. */
        @Override
        public boolean concerns(Condition.Doing doing) {
            return concerns(doing.state(), doing.feed()) && meant.stream().noneMatch(acting -> acting.isIn(doing.state(), doing.feed()));
        }

        @Override
        public boolean fallsAwayUnasked() {
            return true;
        }

        @Override
        public double slack(Pair pair) {
            return ALLOWED_PERCENT - changePercent(pair);
        }

        @Override
        public Severity severity(Pair pair) {
            return Severity.NUISANCE;
        }

        @Override
        public Margin margin(Pair pair) {
            return changeMargin(pair);
        }

        @Override
        public List<Observation> observations(Pair pair) {
            List<Observation> seen = new ArrayList<>(super.observations(pair));
            seen.add(path(pair.fitted(), about()));
            return seen;
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
            double forwards = pair.working().mostAmps(about, true);
            double backwards = pair.working().mostAmps(about, false);
            double share = LoadCase.ALLOWED_PERCENT / 100 * Math.max(forwards, backwards);
            return Math.max(LEAST_AMPS, share);
        }

        /** What it carries the way round that it never carries anything in the stock vehicle; not a number where it has no way of its own. */
        private double strayAmps(Pair pair) {
            double forwards = pair.working().mostAmps(about, true);
            double backwards = pair.working().mostAmps(about, false);
            double amps = pair.fitted().point().amps(about);
            boolean oneWay = Math.min(forwards, backwards) < LEAST_AMPS && Math.max(forwards, backwards) >= LEAST_AMPS;
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
                    path(pair.fitted(), about));
        }
    }
}
