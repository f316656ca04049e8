package org.loomproof.workshop.prover.damage;

import java.util.BitSet;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.prover.explore.Area;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Ends;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.state.StepsTo;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Situation;

/**
 * Looks for what each damage comes to. An area that a damage leaves as it is need not be walked: it is as planned. In the
 * others only those situations are solved in which the damage can change anything.
 *
 * <p>Several threads may ask for outcomes at once.
 */
public final class DamageSearch {

    private final AsPlanned job;
    private final Map<Corner, AsPlanned> jobs = new ConcurrentHashMap<>();
    private final Function<Damage, List<Case>> cases;
    private final List<Case> plannedCases;
    private final StepsTo stepsTo;
    private final List<Damaged> damages;
    private final List<Set<PartId>> reach;
    private final Map<Ground, WholeWalk> walks = new ConcurrentHashMap<>();
    private final Map<Ground, Brink> brinks = new ConcurrentHashMap<>();
    private final Map<Ground, PlannedSlacks> slacks = new ConcurrentHashMap<>();
    private final Map<Ground, EndCars> endCars = new ConcurrentHashMap<>();

    /** What tells one walk of the whole vehicle from another. */
    private record Ground(Set<PartId> parts, List<Condition> conditions, Corner corner) {
        Ground at(Corner other) {
            return new Ground(parts, conditions, other);
        }
    }

    /**
     * @param job the job as planned
     * @param cases what is to be asked of a damaged vehicle; those that do not hold as planned left out
     * @param damages all that will be asked about
     */
    public DamageSearch(AsPlanned job, Function<Damage, List<Case>> cases, List<Damage> damages) {
        this.job = job;
        this.cases = cases;
        this.plannedCases = cases.apply(new Damage(job.plan(), List.of()));
        this.stepsTo = new StepsTo(job.brief().sheet(), job.brief().kit());
        this.damages = damages.stream().map(damage -> Damaged.of(job, damage)).toList();
        this.reach = this.damages.stream().map(DamageSearch::reach).toList();
        walkWhole();
    }

    private void walkWhole() {
        Map<Ground, Map<Integer, List<Change>>> grounds = new LinkedHashMap<>();
        for (int number = 0; number < damages.size(); number++) {
            Damaged damaged = damages.get(number);
            for (Area area : damaged.reached()) {
                grounds.computeIfAbsent(ground(damaged, area, Corner.TYPICAL), g -> new LinkedHashMap<>())
                        .put(number, damaged.changes());
            }
        }
        grounds.forEach((ground, there) -> {
            walks.put(ground, walk(ground, there));
            brink(ground).corners().forEach(end -> walks.put(ground.at(end), walk(ground.at(end), there)));
        });
    }

    private static Ends ends(Damaged damaged, Area area) {
        return Ends.of(area, damaged.vehicle());
    }

    private Brink brink(Ground ground) {
        return brinks.computeIfAbsent(ground.at(Corner.TYPICAL), g -> Brink.of(job, new Area(g.parts(), true)));
    }

    /** At typical values everywhere, and at a corner where contacts may stand otherwise than they do at typical values. */
    private WholeWalk walk(Ground ground, Map<Integer, List<Change>> there) {
        WholeWalk walk = new WholeWalk(job(ground.corner()), ground.parts(), ground.conditions(), brink(ground));
        return ground.corner().equals(Corner.TYPICAL)
                ? walk.walk(there)
                : walk.walkNear(whole(ground.at(Corner.TYPICAL)), there);
    }

    private WholeWalk whole(Ground ground) {
        WholeWalk known = walks.get(ground);
        if (known != null) {
            return known;
        }
        if (!ground.corner().equals(Corner.TYPICAL)) {
            whole(ground.at(Corner.TYPICAL));
        }
        WholeWalk walked = walk(ground, Map.of());
        WholeWalk first = walks.putIfAbsent(ground, walked);
        return first == null ? walked : first;
    }

    private AsPlanned job(Corner corner) {
        return corner.equals(Corner.TYPICAL) ? job : jobs.computeIfAbsent(corner, job::at);
    }

    private Ground ground(Damaged damaged, Area area, Corner corner) {
        return new Ground(
                damaged.planned(job, area),
                WholeWalk.conditions(job, damaged.vehicle().wired().controller().orElseThrow()),
                corner);
    }

    /** What the damage of that number comes to. */
    public Outcome outcome(int number) {
        return outcome(damages.get(number), Optional.of(number));
    }

    /** What a damage comes to that was not announced. */
    public Outcome outcome(Damage damage) {
        return outcome(Damaged.of(job, damage), Optional.empty());
    }

    private Outcome outcome(Damaged damaged, Optional<Integer> number) {
        List<Case> asked = cases.apply(damaged.damage());
        Outcome outcome = Outcome.NOTHING;
        for (Area area : damaged.reached()) {
            List<Case> here = asked.stream()
                    .filter(each -> area.parts().contains(each.about()))
                    .toList();
            outcome = outcome.and(outcome(damaged, number, area, here));
        }
        return outcome;
    }

    /** In one area: at typical values, in the cold and in the heat where there are coils, and at the ends of figures. */
    private Outcome outcome(Damaged damaged, Optional<Integer> number, Area area, List<Case> asked) {
        Ground ground = ground(damaged, area, Corner.TYPICAL);
        PlannedSlacks planned =
                slacks.computeIfAbsent(ground, g -> new PlannedSlacks(whole(g), stepsTo, plannedCases(g)));
        DamageWalk typical = walk(damaged, area, Corner.TYPICAL, asked, Optional.of(planned));
        Outcome outcome = typical.walk(number, damaged);
        List<Case> lasting =
                asked.stream().filter(each -> job.lasting().contains(each.id())).toList();
        for (Corner end : brink(ground).corners()) {
            outcome = outcome.orAtEnds(
                    walk(damaged, area, end, lasting, Optional.empty()).walkNear(number, typical));
        }
        return atEnds(damaged, area).judged(typical, outcome);
    }

    private List<Case> plannedCases(Ground ground) {
        return plannedCases.stream()
                .filter(each -> ground.parts().contains(each.about()))
                .toList();
    }

    private DamageWalk walk(
            Damaged damaged, Area area, Corner corner, List<Case> asked, Optional<PlannedSlacks> planned) {
        Vehicle vehicle = (corner.equals(Corner.TYPICAL)
                        ? damaged.vehicle()
                        : damaged.damage().vehicle(job.brief(), corner))
                .restrictedTo(area);
        Fuses fuses = new Fuses(vehicle.wired(), damaged.damage().plan());
        return new DamageWalk(job, whole(ground(damaged, area, corner)), corner, vehicle, fuses, asked, planned);
    }

    private AtEnds atEnds(Damaged damaged, Area area) {
        Ground ground = ground(damaged, area, Corner.TYPICAL);
        EndCars planned = endCars.computeIfAbsent(ground, g -> new EndCars(job, whole(g), new Area(g.parts(), true)));
        return new AtEnds(job, whole(ground), planned, damaged, area, ends(damaged, area));
    }

    /** A damaged vehicle to be looked at. Not for sharing between threads. */
    public DamageLook look(Damage damage) {
        Damaged damaged = Damaged.of(job, damage);
        return new DamageLook(damaged.reached().stream()
                .map(area -> new DamageLook.Place(
                        walk(damaged, area, Corner.TYPICAL, List.of(), Optional.empty()), () -> atEnds(damaged, area)))
                .toList());
    }

    /** Whether no area is reached by both: then each is seen as if it were alone. */
    public boolean areApart(int one, int other) {
        return Collections.disjoint(reach.get(one), reach.get(other));
    }

    private static Set<PartId> reach(Damaged damaged) {
        return damaged.reached().stream()
                .flatMap(area -> area.parts().stream())
                .collect(Collectors.toUnmodifiableSet());
    }

    /**
     * What the vehicle as planned shows in the situation, wherever a damage could change it. Areas overlap; a sign of which
     * two of them say otherwise is not sure.
     */
    public Showing asPlanned(Situation situation) {
        BitSet there = new BitSet();
        BitSet absent = new BitSet();
        for (Map.Entry<Ground, WholeWalk> each : walks.entrySet()) {
            if (!each.getKey().corner().equals(Corner.TYPICAL)) {
                continue;
            }
            WholeWalk walk = each.getValue();
            walk.places
                    .find(situation)
                    .flatMap(key -> Optional.ofNullable(walk.seen(key)))
                    .ifPresent(seen -> {
                        there.or(seen.there());
                        absent.or(seen.absent());
                    });
        }
        BitSet both = (BitSet) there.clone();
        both.and(absent);
        there.andNot(both);
        absent.andNot(both);
        return new Showing(situation, signs(there), signs(absent));
    }

    private List<Sign> signs(BitSet places) {
        return places.stream().mapToObj(job.signs().list()::get).toList();
    }

    /** Operating points asked for while the vehicle was walked as planned. */
    public long wholeSolves() {
        return walks.values().stream().mapToLong(WholeWalk::solves).sum()
                + slacks.values().stream().mapToLong(PlannedSlacks::solves).sum();
    }
}
