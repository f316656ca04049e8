package org.loomproof.workshop.planner.coupling;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.loomproof.workshop.brief.kit.Lead;
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

    /** The local name of the diode across the coil of a factory wire that the lead works straight. */
    public static AddedPartId ofWire(Lead lead, String wire) {
        return Draft.local(lead.id(), NAME + " " + wire);
    }

    /** The diodes across coils, whatever these belong to. */
    public static List<Piece.Diode> list(Draft draft) {
        return draft.pieces().stream()
                .filter(Piece.Diode.class::isInstance)
                .map(Piece.Diode.class::cast)
                .filter(diode -> (diode.name() + " ").contains(" " + NAME + " "))
                .toList();
    }

    /** The same coupling with a zener behind every diode across a coil, under another name. */
    public static Draft sooner(Draft draft, ZenerType zener, String key) {
        List<Piece> pieces = new ArrayList<>(draft.pieces());
        Map<End, AddedPartId> zeners = new HashMap<>();
        for (Piece.Diode clamp : list(draft)) {
            AddedPartId z = Draft.local(clamp.name(), "zener");
            zeners.put(Draft.at(clamp.name(), "K"), z);
            pieces.add(new Piece.Zener(z, zener));
        }
        List<Run> runs = new ArrayList<>();
        for (Run run : draft.runs()) {
            AddedPartId from = zeners.get(run.from());
            AddedPartId to = zeners.get(run.to());
            if (from != null) {
                runs.add(run.between(run.from(), Draft.at(from, "K"), run.behind()));
                runs.add(run.between(Draft.at(from, "A"), run.to(), run.behind()));
            } else if (to != null) {
                runs.add(run.between(run.from(), Draft.at(to, "A"), run.behind()));
                runs.add(new Run(
                        Draft.at(to, "K"),
                        run.to(),
                        Draft.BESIDE,
                        run.carries(),
                        run.drop(),
                        run.behind(),
                        run.noThinnerThan()));
            } else {
                runs.add(run);
            }
        }
        return new Draft(key, pieces, runs, draft.throughController());
    }
}
