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
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.wiring.Situation;

/**
 * Looks for what each damage comes to. An area that a damage leaves as it is need not be walked: it is as planned. In the
 * others only those situations are solved in which the damage can change anything.
 *
 * <p>Several threads may ask for outcomes at once.
 */
public final class DamageSearch {

    private final AsPlanned job;
    private final Function<Damage, List<Case>> cases;
    private final List<Damaged> damages;
    private final List<Set<PartId>> reach;
    private final Map<Ground, WholeWalk> walks = new ConcurrentHashMap<>();

    /** What tells one walk of the whole vehicle from another. */
    private record Ground(Set<PartId> parts, List<Condition> conditions) {}

    /**
     * @param job the job as planned
     * @param cases what is to be asked of a damaged vehicle; those that do not hold as planned left out
     * @param damages all that will be asked about
     */
    public DamageSearch(AsPlanned job, Function<Damage, List<Case>> cases, List<Damage> damages) {
        this.job = job;
        this.cases = cases;
        this.damages = damages.stream().map(damage -> Damaged.of(job, damage)).toList();
        this.reach = this.damages.stream().map(DamageSearch::reach).toList();
        walkWhole();
    }

    private void walkWhole() {
        Map<Ground, Map<Integer, List<Change>>> grounds = new LinkedHashMap<>();
        for (int number = 0; number < damages.size(); number++) {
            Damaged damaged = damages.get(number);
            for (Area area : damaged.reached()) {
                grounds.computeIfAbsent(ground(damaged, area), g -> new LinkedHashMap<>())
                        .put(number, damaged.changes());
            }
        }
        grounds.forEach((ground, there) -> walks.put(ground, walk(ground, there)));
    }

    private WholeWalk walk(Ground ground, Map<Integer, List<Change>> damages) {
        return new WholeWalk(job, ground.parts(), ground.conditions()).walk(damages);
    }

    private Ground ground(Damaged damaged, Area area) {
        return new Ground(
                damaged.planned(job, area),
                WholeWalk.conditions(job, damaged.vehicle().wired().controller().orElseThrow()));
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
            WholeWalk whole = whole(damaged, area);
            List<Case> here = asked.stream()
                    .filter(each -> area.parts().contains(each.about()))
                    .toList();
            DamageWalk walk =
                    new DamageWalk(job, whole, damaged.vehicle().restrictedTo(area), fuses(damaged, area), here);
            outcome = outcome.and(walk.walk(number, damaged));
        }
        return outcome;
    }

    private Fuses fuses(Damaged damaged, Area area) {
        return new Fuses(
                damaged.vehicle().restrictedTo(area).wired(), damaged.damage().plan());
    }

    /** A damaged vehicle to be looked at. Not for sharing between threads. */
    public DamageLook look(Damage damage) {
        Damaged damaged = Damaged.of(job, damage);
        List<DamageWalk> walks = damaged.reached().stream()
                .map(area -> new DamageWalk(
                        job,
                        whole(damaged, area),
                        damaged.vehicle().restrictedTo(area),
                        fuses(damaged, area),
                        List.of()))
                .toList();
        return new DamageLook(walks);
    }

    private WholeWalk whole(Damaged damaged, Area area) {
        return walks.computeIfAbsent(ground(damaged, area), g -> walk(g, Map.of()));
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
        for (WholeWalk walk : walks.values()) {
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
        return walks.values().stream().mapToLong(WholeWalk::solves).sum();
    }
}
