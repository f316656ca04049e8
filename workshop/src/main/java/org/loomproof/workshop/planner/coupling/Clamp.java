package org.loomproof.workshop.planner.coupling;

import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.trade.diode.DiodeType;
import org.loomproof.workshop.trade.wire.AllowedDrop;

/** The diode across a coil that an output lets go of: anode to 85, cathode (band) to 86, so that it blocks while the coil works. */
public final class Clamp {

    private Clamp() {}

    /** Lays it across the coil of that relay. */
    public static void across(AddedPartId relay, DiodeType type, Draft.Builder draft) {
        AddedPartId d = Draft.local(relay, "clamp");
        Amps atRest = new Amps(0);
        draft.with(new Piece.Diode(d, type));
        draft.run(Draft.at(d, "A"), Draft.at(relay, "85"), Draft.BESIDE, atRest, AllowedDrop.SIGNAL);
        draft.run(Draft.at(d, "K"), Draft.at(relay, "86"), Draft.BESIDE, atRest, AllowedDrop.SIGNAL);
    }
}
