package org.loomproof.workshop.prover.explore;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.prover.state.Space;
import org.loomproof.workshop.prover.state.StepsTo;
import org.loomproof.workshop.wiring.Situation;

/**
 * What is found of a case when only that is moved which is operated in its own block, everything else stays at rest, and every
 * figure is at its typical value: a quick look, and no proof.
 *
 * @param soonestBroken where it is broken after the fewest steps; empty when it is nowhere
 * @param isDecided whether every situation looked at came to rest
 */
public record Nearby(Optional<Situation> soonestBroken, boolean isDecided) {

    /** One look a case, in their order. All cases are about the same part. */
    public static List<Nearby> look(Brief brief, Vehicle stock, Vehicle fitted, List<Case> cases) {
        PartId about = cases.getFirst().about();
        Area area = at(about, Area.list(stock.wired(), fitted.wired()));
        Space space = Sweep.space(brief, stock, fitted, at(about, Area.blocks(stock.wired(), fitted.wired())), cases);
        Sweep sweep = new Sweep(
                        brief.sheet(),
                        space,
                        new StepsTo(brief.sheet(), brief.kit()),
                        stock.restrictedTo(area),
                        fitted.restrictedTo(area),
                        cases)
                .walk(Onlooker.NONE.begins(space, fitted));
        List<Nearby> looks = new ArrayList<>();
        for (int c = 0; c < cases.size(); c++) {
            looks.add(look(space, sweep, c));
        }
        return looks;
    }

    private static Nearby look(Space space, Sweep sweep, int c) {
        Finding finding = sweep.findings().get(c);
        return new Nearby(
                finding.soonestBroken().map(found -> sweep.situation(c, found.key())),
                finding.unsettled().isEmpty() && space.leftAtRest().isEmpty());
    }

    private static Area at(PartId about, List<Area> areas) {
        return areas.stream()
                .filter(area -> area.parts().contains(about))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no such part: " + about));
    }
}
