package org.loomproof.workshop.prover.damage;

import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.explore.Area;
import org.loomproof.workshop.prover.explore.Variations;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Situation;

/** What there is to see of a vehicle at one corner in every situation: the whole of it walked, nothing taken over from another corner. */
public final class SeenAtACorner {

    private final Signs signs;
    private final WholeWalk walk;

    private SeenAtACorner(Signs signs, WholeWalk walk) {
        this.signs = signs;
        this.walk = walk;
    }

    /**
     * The vehicle as planned, or with a damage.
     *
     * @param brief with the kit set as the plan says
     */
    public static SeenAtACorner of(Brief brief, Plan plan, Corner corner, Optional<Damage> damage) {
        Vehicle stock = Vehicle.stock(brief, corner);
        Vehicle planned = Vehicle.fitted(brief, plan, corner);
        Vehicle shown = damage.map(d -> d.vehicle(brief, corner)).orElse(planned);
        Signs signs = new Signs(brief, plan, planned.wired());
        AsPlanned job = new AsPlanned(
                brief,
                plan,
                stock,
                shown,
                signs,
                Set.of(),
                List.of(),
                Map.of(),
                Set.of(),
                Variations.all(brief, plan, stock, planned));
        Set<PartId> parts = Stream.of(stock, shown)
                .flatMap(vehicle -> vehicle.wired().network().parts().stream())
                .map(Part::id)
                .collect(Collectors.toSet());
        WholeWalk walk = new WholeWalk(
                job,
                parts,
                WholeWalk.conditions(job, shown.wired().controller().orElseThrow()),
                Brink.of(job, new Area(parts, true)));
        return new SeenAtACorner(signs, walk.walk(Map.of()));
    }

    /** The signs, by their places in {@link #signs()}, that surely differ from what is seen of another vehicle. */
    public BitSet differing(SeenAtACorner planned, Situation situation) {
        Optional<Seen> now = walk.places.find(situation).flatMap(key -> Optional.ofNullable(walk.seen(key)));
        Optional<Seen> before =
                planned.walk.places.find(situation).flatMap(key -> Optional.ofNullable(planned.walk.seen(key)));
        return now.isPresent() && before.isPresent()
                ? now.get().differing(before.get(), signs.standingCurrent())
                : new BitSet();
    }

    /** All signs. */
    public List<Sign> signs() {
        return signs.list();
    }
}
