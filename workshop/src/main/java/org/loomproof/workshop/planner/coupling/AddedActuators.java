package org.loomproof.workshop.planner.coupling;

import java.util.List;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.planner.coupling.Driving.Side;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.sizing.CoilCurrent;
import org.loomproof.workshop.trade.diode.DiodeType;
import org.loomproof.workshop.trade.relay.RelayType;
import org.loomproof.workshop.trade.wire.AllowedDrop;

/**
 * Reversing lock actuators that the work adds: both legs rest at the body through break contacts, and each output's relay takes
 * one of them to the fused supply. With both relays pulled in both legs are at the supply and nothing moves.
 */
public final class AddedActuators {

    private AddedActuators() {}

    /** Which leg of the actuators an output's relay works. */
    public enum Leg {
        LOCKS("+"),
        UNLOCKS("-");

        private final String terminal;

        Leg(String terminal) {
            this.terminal = terminal;
        }
    }

    /**
     * One output's relay with the leg that it works on every actuator; actuators are wired from one to the next.
     *
     * @param all what they draw together at the highest supply, held fast
     */
    public static Draft of(
            Lead lead,
            Side output,
            Leg leg,
            List<AddedLoad.Item> actuators,
            Amps all,
            RelayType relay,
            DiodeType clamp,
            Feed coils,
            Feed contacts) {
        AddedPartId k = Draft.local(lead.id(), "relay");
        Amps coil = CoilCurrent.most(relay.coil());
        Draft.Builder draft = Draft.of("coupling.added-actuators").with(new Piece.Relay(k, relay));
        if (output == Side.HIGH) {
            draft.throughController(coil);
        }
        contacts(k, leg, actuators, all, contacts, draft);
        Driving.coil(output, k, Draft.lead(lead), coil, coils, draft);
        Clamp.across(k, clamp, draft);
        return draft.build();
    }

    /**
     * The same at doors without a motor in a car that has some: the relay's coil hangs between the driven end of a cut motor leg
     * and the body, so that these actuators follow whatever works the motors, and the car's switch carries a coil more and no motor.
     */
    public static Draft following(
            Lead lead,
            Leg leg,
            End driven,
            List<AddedLoad.Item> actuators,
            Amps all,
            RelayType relay,
            DiodeType clamp,
            Feed contacts) {
        AddedPartId k = Draft.local(lead.id(), "follower");
        Amps coil = CoilCurrent.most(relay.coil());
        Draft.Builder draft = Draft.of("coupling.added-actuators").with(new Piece.Relay(k, relay));
        contacts(k, leg, actuators, all, contacts, draft);
        draft.run(driven, Draft.at(k, "86"), Draft.BESIDE, coil, AllowedDrop.SIGNAL);
        draft.run(Draft.at(k, "85"), Draft.body(), Draft.BESIDE, coil, AllowedDrop.SIGNAL);
        Clamp.across(k, clamp, draft);
        return draft.build();
    }

    private static void contacts(
            AddedPartId k, Leg leg, List<AddedLoad.Item> actuators, Amps all, Feed contacts, Draft.Builder draft) {
        if (leg == Leg.LOCKS) {
            contacts.reaching(k, "87", all, all, AllowedDrop.LOCK_MOTOR, draft);
        } else {
            contacts.reachingByTurns(k, "87", all, AllowedDrop.LOCK_MOTOR, draft);
        }
        draft.run(Draft.at(k, "87a"), Draft.body(), Draft.BESIDE, all, AllowedDrop.LOCK_MOTOR);
        End last = Draft.at(k, "30");
        for (AddedLoad.Item actuator : actuators) {
            End terminal = Draft.at(actuator.part(), leg.terminal);
            draft.with(new Piece.Load(actuator.part(), actuator.extra(), actuator.draws()));
            draft.fused(last, terminal, actuator.run(), all, AllowedDrop.LOCK_MOTOR, contacts.fuse());
            last = terminal;
        }
    }
}
