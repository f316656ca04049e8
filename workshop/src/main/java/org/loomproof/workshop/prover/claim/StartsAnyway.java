package org.loomproof.workshop.prover.claim;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Pair;

/**
 * A load behind the starter's cut in a car that somebody has laid hands on. No claim of a plan, since no plan keeps all of it;
 * what a thief achieves is told by it.
 *
 * @param load which
 * @param withIgnition it gets next to nothing while the controller is armed and the ignition is on, by key or by a bridge there
 * @param without the same with the ignition off: the starter would turn, and the engine not run
 */
public record StartsAnyway(ElementId load, Case withIgnition, Case without) {

    private static final Set<String> IGNITION_ON = Set.copyOf(Operable.KEY_POSITIONS.subList(2, 4));

    /** One for each load behind the wires that are cut for the starter interrupt; none where nothing serves it. */
    public static List<StartsAnyway> list(Fitting fitting) {
        return fitting.connected(Wish.STARTER_INTERRUPT).isEmpty()
                ? List.of()
                : fitting.loadsBehind(StarterCut.circuits(fitting)).stream()
                        .map(load -> new StartsAnyway(load, new At(load, fitting, true), new At(load, fitting, false)))
                        .toList();
    }

    private static final class At extends GuardedCase {

        private final boolean ignitionOn;

        At(ElementId load, Fitting fitting, boolean ignitionOn) {
            super(ignitionOn ? "does-not-start-when-armed" : "does-not-turn-when-armed", load, fitting);
            this.ignitionOn = ignitionOn;
        }

        /** Positions of the key that are alike here are not alike to the engine. */
        @Override
        public List<OperableId> asksAbout() {
            return List.of(Operable.KEY);
        }

        @Override
        public boolean concerns(Map<OperableId, String> positions) {
            return ignitionOn == IGNITION_ON.contains(positions.get(Operable.KEY));
        }

        @Override
        public boolean fallsAwayUnasked() {
            return true;
        }

        @Override
        double workingAmps(Pair pair) {
            return pair.working().amps(pair.supply(), load);
        }
    }
}
