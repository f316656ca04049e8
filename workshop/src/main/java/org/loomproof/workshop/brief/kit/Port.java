package org.loomproof.workshop.brief.kit;

import java.util.Optional;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Seconds;
import org.loomproof.workshop.quantity.Volts;

/** What a lead is electrically, seen from its end. */
public sealed interface Port {

    /** How long its pulse lasts, where it is an output and that is said. */
    default Optional<Figure<Seconds>> pulse() {
        return Optional.empty();
    }

    /** Feeds the controller. */
    record Supply() implements Port {}

    /** The controller's ground. */
    record Ground() implements Port {}

    /**
     * Reads a level against the controller's ground.
     *
     * @param active the level that means something
     * @param lowBelow read as low under this
     * @param highAbove read as high above this
     * @param pullUp to the controller's supply
     * @param pullDown to the controller's ground
     * @param clamps whether protection diodes lead to the controller's supply and ground
     */
    record Input(
            Active active,
            Figure<Volts> lowBelow,
            Figure<Volts> highAbove,
            Optional<Figure<Ohms>> pullUp,
            Optional<Figure<Ohms>> pullDown,
            boolean clamps)
            implements Port {}

    /**
     * Sinks current to the controller's ground when on, open when off.
     *
     * @param rating the most it may carry
     * @param saturation volts left across it at its rating
     * @param pulse how long it is on, when it is not steady
     * @param bodyDiode whether a diode conducts from ground to the lead when off, as in a field-effect transistor
     * @param clamp whether a diode leads from the lead to the controller's supply
     */
    record LowSide(
            Figure<Amps> rating,
            Figure<Volts> saturation,
            Optional<Figure<Seconds>> pulse,
            boolean bodyDiode,
            boolean clamp)
            implements Port {}

    /**
     * Sources current from the controller's supply when on, open when off.
     *
     * @param rating the most it may carry
     * @param saturation volts left across it at its rating
     * @param pulse how long it is on, when it is not steady
     * @param bodyDiode whether a diode conducts from the lead to the supply when off
     */
    record HighSide(Figure<Amps> rating, Figure<Volts> saturation, Optional<Figure<Seconds>> pulse, boolean bodyDiode)
            implements Port {}

    /** Goes to a supplied extra (indicator, button, sensor) by its own plug and never to the vehicle. */
    record ToExtra(String extra) implements Port {}

    /** Which level of an input means something. */
    enum Active {
        LOW,
        HIGH
    }
}
