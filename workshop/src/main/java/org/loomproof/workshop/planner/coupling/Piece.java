package org.loomproof.workshop.planner.coupling;

import java.util.Optional;
import org.loomproof.workshop.brief.kit.Extra;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;
import org.loomproof.workshop.trade.buffer.BufferType;
import org.loomproof.workshop.trade.diode.DiodeType;
import org.loomproof.workshop.trade.diode.ZenerType;
import org.loomproof.workshop.trade.relay.RelayType;

/**
 * A part of a coupling before the plan is numbered. Its name is local: two couplings that name the same piece share one part.
 * A fuse has no rating yet, since what it carries is known only when all that share it have spoken.
 */
public sealed interface Piece {

    /** Its local name, such as {@code ignition-fuse} or {@code P1-3 relay}. */
    AddedPartId name();

    /** A changeover relay. */
    record Relay(AddedPartId name, RelayType type) implements Piece {}

    /** A diode. */
    record Diode(AddedPartId name, DiodeType type) implements Piece {}

    /** A zener diode. */
    record Zener(AddedPartId name, ZenerType type) implements Piece {}

    /** A ready-made transistor buffer. */
    record Buffer(AddedPartId name, BufferType type) implements Piece {}

    /** A resistor. */
    record Resistor(AddedPartId name, Ohms resistance) implements Piece {}

    /**
     * A fuse.
     *
     * @param carries what this coupling sends through it for long
     * @param feedsController whether it also carries whatever the controller's supply carries
     */
    record Fuse(AddedPartId name, Amps carries, boolean feedsController) implements Piece {}

    /**
     * A pole of a connector.
     *
     * @param connector the connector's name in the plan
     * @param to what moves
     */
    record Pole(AddedPartId name, String connector, String to) implements Piece {}

    /** A load out of the kit's box. */
    record Load(AddedPartId name, String extra, Amps draws, Optional<Volts> forward) implements Piece {}

    /** The battery of a sounder out of the kit's box, under charge. */
    record StandbyBattery(AddedPartId name, String extra, Amps charging, Amps charged) implements Piece {}

    /** A button or sensor out of the kit's box, on bare leads. */
    record Sender(AddedPartId name, Extra extra) implements Piece {}

    /** A pin switch at an opening. */
    record Pin(AddedPartId name, OperableId opening) implements Piece {}
}
