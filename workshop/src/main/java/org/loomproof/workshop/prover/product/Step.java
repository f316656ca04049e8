package org.loomproof.workshop.prover.product;

import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.trade.supply.SupplyPoint;

/** One step from a state of vehicle and controller to the next. */
sealed interface Step {

    /** The controller goes over: by a command, a lost feed, a timer, or what it is given. */
    record Controls(Deed deed) implements Step {}

    /** Something is operated. */
    record Operates(OperableId operable, String position) implements Step {}

    /** The battery's volts become others. */
    record Supplies(SupplyPoint supply) implements Step {}

    /** A light that faded is dark. */
    record Darkens(CircuitId circuit) implements Step {}
}
