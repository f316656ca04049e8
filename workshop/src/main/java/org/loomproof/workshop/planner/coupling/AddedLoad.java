package org.loomproof.workshop.planner.coupling;

import java.util.Optional;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.wire.AllowedDrop;

/** A load out of the kit's box, such as the siren; how an output works it says the grammar. */
public final class AddedLoad {

    private AddedLoad() {}

    /**
     * What is added.
     *
     * @param extra the kit's name for it
     * @param draws what it draws for long
     * @param forward volts across a bare light-emitting diode; empty for any other load
     * @param run from the controller
     */
    public record Item(String extra, Amps draws, Optional<Volts> forward, Metres run) {

        /** Its local name: one, whoever works it. */
        public AddedPartId part() {
            return Draft.local(extra, "load");
        }

        /** The load itself. */
        public Piece.Load piece() {
            return new Piece.Load(part(), extra, draws, forward);
        }
    }

    /** The battery of a sounder, charged from a fused feed whatever its output does. */
    public static Draft charged(String extra, Amps charging, Amps charged, Feed feed) {
        AddedPartId battery = Draft.local(extra, "battery");
        Draft.Builder draft =
                Draft.of("coupling.charged-sounder").with(new Piece.StandbyBattery(battery, extra, charging, charged));
        feed.to(Draft.at(battery, "+"), charging, AllowedDrop.SIGNAL, draft);
        draft.run(Draft.at(battery, "-"), Draft.body(), Draft.BESIDE, charging, AllowedDrop.SIGNAL);
        return draft.build();
    }
}
