package org.loomproof.workshop.prover.explore;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.loomproof.network.part.HighSideOutput;
import org.loomproof.network.part.LowSideOutput;
import org.loomproof.network.part.Part;
import org.loomproof.network.part.Relay;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Warmth;

/**
 * The corners at which an area is looked at beyond typical values: ranged figures at their worse ends together, and how warm the
 * car is. Coils pull in and let go at volts that depend on how warm they are, controllers wake and fall asleep by the volts that
 * warm wires leave them, and what moves with that one situation does not tell: where anything so moves, each corner is looked at
 * in the cold and in the heat, and between the two lies the rest.
 *
 * @param contactsMove whether there are relays, or outputs of a controller that wakes and falls asleep
 */
public record Ends(boolean contactsMove) {

    /** Those of an area, where any of these vehicles has its parts. */
    public static Ends of(Area area, Vehicle... vehicles) {
        return new Ends(Stream.of(vehicles)
                .flatMap(vehicle -> vehicle.wired().network().parts().stream())
                .anyMatch(part -> isMoved(part) && area.parts().contains(part.id())));
    }

    private static boolean isMoved(Part part) {
        return part instanceof Relay || part instanceof LowSideOutput || part instanceof HighSideOutput;
    }

    /**
     * The corners that are the worst for cases, each with the cases it is worst for. Where contacts move, warmth is no part of
     * a corner, and cases that no figure harms are at a corner too.
     *
     * @param asked the cases
     */
    public Map<Corner, List<Integer>> groups(Map<Integer, Sensitivity> sensitivities, List<Integer> asked) {
        return CornerGroups.of(contactsMove ? atAnyWarmth(sensitivities) : sensitivities, asked, contactsMove);
    }

    private static Map<Integer, Sensitivity> atAnyWarmth(Map<Integer, Sensitivity> sensitivities) {
        Map<Integer, Sensitivity> all = new HashMap<>();
        sensitivities.forEach((c, sensitivity) -> all.put(c, sensitivity.atAnyWarmth()));
        return all;
    }

    /** The corner itself, or where contacts move the same in the cold and in the heat. */
    public List<Corner> of(Corner corner) {
        return contactsMove ? Warmth.ends().stream().map(end -> end.and(corner)).toList() : List.of(corner);
    }
}
