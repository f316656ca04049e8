package org.loomproof.workshop.planner.coupling;

import java.util.ArrayList;
import java.util.List;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.trade.diode.DiodeType;
import org.loomproof.workshop.trade.diode.ZenerType;
import org.loomproof.workshop.trade.wire.AllowedDrop;

/**
 * What lies across a coil that an output lets go of. A diode, anode to 85, cathode (band) to 86, blocks while the coil works; it
 * keeps the kick lowest and lets the coil's current die slowest. A zener behind it, band to band, takes the current down sooner, and the
 * output sees its volts.
 */
public final class Clamp {

    private static final String NAME = "clamp";
    private static final Amps AT_REST = new Amps(0);

    private Clamp() {}

    /** Lays a diode across the coil of that relay. */
    public static void across(AddedPartId relay, DiodeType type, Draft.Builder draft) {
        AddedPartId d = Draft.local(relay, NAME);
        draft.with(new Piece.Diode(d, type));
        draft.run(Draft.at(d, "A"), Draft.at(relay, "85"), Draft.BESIDE, AT_REST, AllowedDrop.SIGNAL);
        draft.run(Draft.at(d, "K"), Draft.at(relay, "86"), Draft.BESIDE, AT_REST, AllowedDrop.SIGNAL);
    }

    /** The same coupling with a zener behind every diode across a coil, under another name. */
    public static Draft sooner(Draft draft, ZenerType zener, String key) {
        List<Piece> pieces = new ArrayList<>(draft.pieces());
        List<Run> runs = new ArrayList<>();
        List<Piece.Relay> relays = draft.pieces().stream()
                .filter(Piece.Relay.class::isInstance)
                .map(Piece.Relay.class::cast)
                .toList();
        for (Piece.Relay relay : relays) {
            pieces.add(new Piece.Zener(Draft.local(relay.name(), "zener"), zener));
        }
        for (Run run : draft.runs()) {
            runs.add(run);
            for (Piece.Relay relay : relays) {
                End band = Draft.at(Draft.local(relay.name(), NAME), "K");
                if (run.from().equals(band)) {
                    AddedPartId z = Draft.local(relay.name(), "zener");
                    runs.removeLast();
                    runs.add(run.between(band, Draft.at(z, "K"), run.behind()));
                    runs.add(run.between(Draft.at(z, "A"), run.to(), run.behind()));
                }
            }
        }
        return new Draft(key, pieces, runs, draft.throughController());
    }
}
