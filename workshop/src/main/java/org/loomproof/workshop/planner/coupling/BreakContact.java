package org.loomproof.workshop.planner.coupling;

import java.util.List;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.sizing.CoilCurrent;
import org.loomproof.workshop.trade.diode.DiodeType;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.trade.wire.AllowedDrop;

/**
 * The starter interrupt: the starter wire is cut; 30 takes the switch side and 87a the motor side, so that the wire is whole
 * while the relay rests. The coil stands between the fused ignition and an output that goes to ground while armed. With the
 * key out nothing flows, and a controller without supply leaves the relay at rest.
 */
public final class BreakContact {

    /** From the cut to the relay beside it. Common practice, no published source. */
    private static final Metres STUB = new Metres(0.3);

    private BreakContact() {}

    /**
     * One starter wire to be interrupted.
     *
     * @param before the switch side of the cut
     * @param after the motor side
     * @param name the circuit's name
     * @param carries what flows in it while the starter is engaged
     * @param run from the controller
     * @param size the factory wire
     */
    public record Cut(String name, End before, End after, Amps carries, Metres run, SquareMillimetres size) {}

    /**
     * Cuts every starter wire; all coils hang on the same ignition feed and the same output.
     *
     * @param isolated whether a diode stands between the output and the coils
     */
    public static Draft of(
            Lead lead, List<Cut> cuts, Feed ignition, RelayType relay, DiodeType clamp, boolean isolated) {
        Draft.Builder draft = Draft.of(isolated ? "coupling.break-contact-isolated" : "coupling.break-contact");
        Amps coil = CoilCurrent.most(relay.coil());
        Amps coilsTogether = new Amps(coil.value() * cuts.size());
        End last = isolated
                ? Driving.isolated(lead, Driving.Side.LOW, clamp, coilsTogether, ignition.run(), draft)
                : Draft.lead(lead);
        for (Cut cut : cuts) {
            AddedPartId k = Draft.local(lead.id(), "relay " + cut.name());
            draft.with(new Piece.Relay(k, relay));
            draft.factory(cut.before(), Draft.at(k, "30"), STUB, cut.carries(), AllowedDrop.STARTER_CUT, cut.size());
            draft.factory(Draft.at(k, "87a"), cut.after(), STUB, cut.carries(), AllowedDrop.STARTER_CUT, cut.size());
            ignition.to(Draft.at(k, "86"), coil, AllowedDrop.SIGNAL, draft);
            draft.run(last, Draft.at(k, "85"), cut.run(), coil, AllowedDrop.SIGNAL);
            Clamp.across(k, clamp, draft);
            last = Draft.at(k, "85");
        }
        return draft.build();
    }
}
