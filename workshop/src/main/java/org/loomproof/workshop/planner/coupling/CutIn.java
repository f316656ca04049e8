package org.loomproof.workshop.planner.coupling;

import java.util.List;
import java.util.Optional;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.sizing.CoilCurrent;
import org.loomproof.workshop.trade.diode.DiodeType;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.trade.wire.AllowedDrop;

/**
 * Relays cut into factory wires: at rest the break contact keeps the wire whole, at work the make contact gives what hangs on
 * it a pole of its own and the car's switch is off the wire.
 */
public final class CutIn {

    /** From a cut to the relay beside it. Common practice, no published source. */
    private static final Metres STUB = new Metres(0.3);

    private CutIn() {}

    /**
     * One relay of the coupling.
     *
     * @param relay its local name, so that another lead's relay can be named before it is drawn
     * @param common where 30 goes; empty where another relay's break contact leads to it
     * @param rest where 87a goes: the cut's other end, or 30 of another relay
     * @param pole what 87 gives; empty where the load is only let go
     * @param byTurns whether it draws only while another relay that is fused already does not
     */
    public record Throw(AddedPartId relay, Optional<End> common, End rest, Optional<Side> pole, boolean byTurns) {}

    /**
     * What all relays of the coupling have in common.
     *
     * @param carries through a contact while the load works
     * @param size of the factory wire
     * @param run from the controller
     * @param type of relay
     * @param clamp across the coils of one output
     * @param coils feed for the coils of a low-side output
     * @param contacts feed for contacts that give the supply
     */
    public record Making(
            Amps carries,
            SquareMillimetres size,
            Metres run,
            RelayType type,
            DiodeType clamp,
            Feed coils,
            Feed contacts) {}

    /** The relays of one lead; their coils lie side by side on its output. */
    public static Draft of(String key, Lead lead, Side output, List<Throw> relays, Making making) {
        Amps coil = CoilCurrent.most(making.type().coil());
        Draft.Builder draft = Draft.of(key);
        if (output == Side.HIGH) {
            draft.throughController(new Amps(coil.value() * relays.size()));
        }
        End last = Draft.lead(lead);
        for (Throw each : relays) {
            AddedPartId k = each.relay();
            draft.with(new Piece.Relay(k, making.type()));
            each.common().ifPresent(end -> contact(draft, Draft.at(k, "30"), end, making));
            contact(draft, Draft.at(k, "87a"), each.rest(), making);

            each.pole().ifPresent(pole -> gives(pole, each, making, draft));
            last = Driving.coil(output, k, last, coil, making.coils(), draft);
            if (each.equals(relays.getFirst())) {
                // Coils that lie side by side on one output are let go together: one clamp serves them all.
                Clamp.across(k, making.clamp(), draft);
            }
        }
        return draft.build();
    }

    private static void gives(Side pole, Throw each, Making making, Draft.Builder draft) {
        AddedPartId k = each.relay();
        switch (pole) {
            case LOW ->
                draft.run(Draft.at(k, "87"), Draft.body(), Draft.BESIDE, making.carries(), AllowedDrop.LOCK_MOTOR);
            case HIGH -> {
                if (each.byTurns()) {
                    making.contacts().reachingByTurns(k, "87", making.carries(), AllowedDrop.LOCK_MOTOR, draft);
                } else {
                    making.contacts()
                            .reaching(k, "87", making.carries(), making.carries(), AllowedDrop.LOCK_MOTOR, draft);
                }
            }
        }
    }

    /** A wire from a contact to a factory wire, or to a relay that is drawn by the other lead and lies beside this one. */
    private static void contact(Draft.Builder draft, End contact, End to, Making making) {
        boolean beside = to instanceof End.OfPart;
        draft.factory(
                contact, to, beside ? Draft.BESIDE : STUB, making.carries(), AllowedDrop.LOCK_MOTOR, making.size());
    }
}
