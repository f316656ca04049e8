package org.loomproof.workshop.prover.damage;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.loomproof.workshop.wiring.Situation;

/** A damaged vehicle as a person sees it. Each situation is solved when it is first looked at. */
public final class DamageLook {

    private final List<Place> areas;
    private final Map<Situation, BitSet> seen = new HashMap<>();
    private boolean isRestless;

    /**
     * One area.
     *
     * @param walk at typical values
     * @param ends at the ends of ranged figures
     */
    record Place(DamageWalk walk, Supplier<AtEnds> ends) {

        BitSet surely(Situation situation) {
            BitSet differing = new BitSet();
            walk.lookAt(situation).ifPresent(differing::or);
            return differing.isEmpty()
                    ? differing
                    : walk.find(situation)
                            .map(key -> ends.get().surely(key, differing))
                            .orElseGet(BitSet::new);
        }
    }

    DamageLook(List<Place> areas) {
        this.areas = List.copyOf(areas);
    }

    /** The signs that surely differ wherever ranged figures lie, and in the cold and in the heat. */
    public BitSet surelyAt(Situation situation) {
        BitSet differing = new BitSet();
        areas.forEach(area -> differing.or(area.surely(situation)));
        return differing;
    }

    /** The signs, by their places, that at typical values surely differ from what is seen as planned; not to be changed. */
    public BitSet at(Situation situation) {
        return seen.computeIfAbsent(situation, s -> {
            BitSet differing = new BitSet();
            for (Place area : areas) {
                area.walk().lookAt(s).ifPresentOrElse(differing::or, () -> isRestless = true);
            }
            return differing;
        });
    }

    /** Whether in some situation that was looked at a part of the vehicle does not come to rest, so that it is open what is seen. */
    public boolean isRestless() {
        return isRestless;
    }
}
