package org.loomproof.workshop.prover.explore;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.loomproof.network.part.Relay;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Warmth;

/**
 * The corners at which an area is looked at beyond typical values: ranged figures at their worse ends together, and how warm the
 * car is. Coils pull in and let go at volts that depend on how warm they are, and what moves with that one situation does not
 * tell: where there are any, each corner is looked at in the cold and in the heat, and between the two lies the rest.
 *
 * @param haveCoils whether there are relays
 */
public record Ends(boolean haveCoils) {

    /** Those of an area, where any of these vehicles has its parts. */
    public static Ends of(Area area, Vehicle... vehicles) {
        return new Ends(Stream.of(vehicles)
                .flatMap(vehicle -> vehicle.wired().network().parts().stream())
                .anyMatch(part -> part instanceof Relay && area.parts().contains(part.id())));
    }

    /**
     * The corners that are the worst for cases, each with the cases it is worst for. Where there are coils, warmth is no part of
     * a corner, and cases that no figure harms are at a corner too.
     *
     * @param asked the cases
     */
    public Map<Corner, List<Integer>> groups(Map<Integer, Sensitivity> sensitivities, List<Integer> asked) {
        return CornerGroups.of(haveCoils ? atAnyWarmth(sensitivities) : sensitivities, asked, haveCoils);
    }

    private static Map<Integer, Sensitivity> atAnyWarmth(Map<Integer, Sensitivity> sensitivities) {
        Map<Integer, Sensitivity> all = new HashMap<>();
        sensitivities.forEach((c, sensitivity) -> all.put(c, sensitivity.atAnyWarmth()));
        return all;
    }

    /** The corner itself, or where there are coils the same in the cold and in the heat. */
    public List<Corner> of(Corner corner) {
        return haveCoils ? Warmth.ends().stream().map(end -> end.and(corner)).toList() : List.of(corner);
    }
}
