package org.loomproof.workshop.prover.explore;

import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.workshop.wiring.ControllerParts;
import org.loomproof.workshop.wiring.InputReach;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.wiring.Wired;
import org.loomproof.workshop.words.Phrase;

/**
 * One vehicle at one operating point, read with a meter.
 *
 * @param vehicle which
 * @param point its volts and amps
 */
public record Reading(Vehicle vehicle, OperatingPoint point) {

    /** The vehicle's network. */
    public Wired wired() {
        return vehicle.wired();
    }

    /** Whether the part is in the network read. */
    public boolean has(PartId part) {
        return wired().network().findPart(part).isPresent();
    }

    /** Amps through the thing, counted into the pin where a meter reaches it. */
    public double amps(Reach reach) {
        return reach.isFirstPin() ? point.amps(reach.part()) : point.ampsInto(reach.part(), reach.pin());
    }

    /** Volts across the thing, first end against the other. */
    public double volts(Reach reach) {
        return point.volts(reach.from(), reach.to());
    }

    /** Volts that the input reads against its own ground. */
    public double volts(InputReach input) {
        return point.volts(input.wire(), input.ground());
    }

    /** Whether nothing holds the input's wire, so that it may read anything. */
    public boolean isFloating(InputReach input) {
        return point.isFloating(input.wire());
    }

    /** Volts of a node against the body. */
    public double volts(Node node) {
        return point.volts(node);
    }

    /** Volts that the controller lives on, between its own supply and ground nodes. */
    public double controllerVolts() {
        ControllerParts controller = controller();
        return point.volts(controller.supply(), controller.ground());
    }

    /** Whether the controller is in the network read; where it is not, nothing it does can matter. */
    public boolean hasController() {
        return wired().network().hasNode(controller().supply());
    }

    /** Volts by which the controller has more than it needs to live; negative when it is without supply. */
    public double aliveByVolts() {
        return controllerVolts() - controller().leastSupplyVolts();
    }

    private ControllerParts controller() {
        return wired().controller().orElseThrow(() -> new IllegalStateException("a stock vehicle has no controller"));
    }

    /** The words for the thing. */
    public Phrase words(PartId part) {
        return wired().words(part);
    }
}
