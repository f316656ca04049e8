package org.loomproof.workshop.prover.damage;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.workshop.wiring.Situation;

/** A damaged vehicle as a person sees it. Each situation is solved when it is first looked at. */
public final class DamageLook {

    private final List<DamageWalk> areas;
    private final Map<Situation, BitSet> seen = new HashMap<>();
    private boolean isRestless;

    DamageLook(List<DamageWalk> areas) {
        this.areas = areas;
    }

    /** The signs, by their places, that surely differ from what is seen as planned; not to be changed. */
    public BitSet at(Situation situation) {
        return seen.computeIfAbsent(situation, s -> {
            BitSet differing = new BitSet();
            for (DamageWalk area : areas) {
                area.lookAt(s).ifPresentOrElse(differing::or, () -> isRestless = true);
            }
            return differing;
        });
    }

    /** Whether in some situation that was looked at a part of the vehicle does not come to rest, so that it is open what is seen. */
    public boolean isRestless() {
        return isRestless;
    }
}
