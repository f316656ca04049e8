package org.loomproof.workshop.planner.coupling;

import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.trade.wire.AllowedDrop;

/** What the controller lives on: a fused supply and a ground screw of its own. */
public final class Supplies {

    private Supplies() {}

    /** The lead on a constant supply, through a fuse near the take-off that carries all the controller carries. */
    public static Draft fused(Lead lead, Circuit constant, Metres run, Amps standby) {
        AddedPartId fuse = fuseOf(lead);
        return Draft.of("coupling.fused-supply")
                .with(new Piece.Fuse(fuse, standby, true))
                .fused(Draft.tap(constant), Draft.at(fuse, "1"), Feed.TAKE_OFF, standby, AllowedDrop.LAMP, fuse)
                .fused(Draft.lead(lead), Draft.at(fuse, "2"), run, standby, AllowedDrop.LAMP, fuse)
                .build();
    }

    /** The local name of the fuse through which a supply lead is fed. */
    public static AddedPartId fuseOf(Lead lead) {
        return Draft.local(lead.id(), "fuse");
    }

    /** The lead on bare metal of the body, by a screw of its own. */
    public static Draft ground(Lead lead, Metres run, Amps carries) {
        return Draft.of("coupling.body-ground")
                .run(Draft.lead(lead), Draft.body(), run, carries, AllowedDrop.SIGNAL)
                .build();
    }
}
