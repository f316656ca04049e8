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

    /** How long it is off before it is on again, where it is an output that goes on and off and that is said. */
    default Optional<Figure<Seconds>> pause() {
        return Optional.empty();
    }

    /** The most it may carry at the instant a lamp or a motor is switched on, where it is an output and that is said or usual. */
    default Optional<Figure<Amps>> rush() {
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
     * @param readsAfter how long it must see a level without a break before that means something, when said
     */
    record Input(
            Active active,
            Figure<Volts> lowBelow,
            Figure<Volts> highAbove,
            Optional<Figure<Ohms>> pullUp,
            Optional<Figure<Ohms>> pullDown,
            boolean clamps,
            Optional<Figure<Seconds>> readsAfter)
            implements Port {
        /** An input of which it is not said how long it takes to read. */
        public Input(
                Active active,
                Figure<Volts> lowBelow,
                Figure<Volts> highAbove,
                Optional<Figure<Ohms>> pullUp,
                Optional<Figure<Ohms>> pullDown,
                boolean clamps) {
            this(active, lowBelow, highAbove, pullUp, pullDown, clamps, Optional.empty());
        }
    }

    /**
     * Sinks current to the controller's ground when on, open when off.
     *
     * @param rating the most it may carry
     * @param saturation volts left across it at its rating
     * @param pulse how long it is on, when it is not steady
     * @param bodyDiode whether a diode conducts from ground to the lead when off, as in a field-effect transistor
     * @param clamp whether a diode leads from the lead to the controller's supply
     * @param bears the most volts it bears while it is off, when said
     * @param pause how long it is off before it is on again, when said
     * @param rush the most it may carry at the instant something is switched on, when said or usual
     */
    record LowSide(
            Figure<Amps> rating,
            Figure<Volts> saturation,
            Optional<Figure<Seconds>> pulse,
            boolean bodyDiode,
            boolean clamp,
            Optional<Figure<Volts>> bears,
            Optional<Figure<Seconds>> pause,
            Optional<Figure<Amps>> rush)
            implements Port {
        /** An output of which it is not said what it bears, how fast it goes on and off, nor what it carries at first. */
        public LowSide(
                Figure<Amps> rating,
                Figure<Volts> saturation,
                Optional<Figure<Seconds>> pulse,
                boolean bodyDiode,
                boolean clamp) {
            this(rating, saturation, pulse, bodyDiode, clamp, Optional.empty(), Optional.empty(), Optional.empty());
        }
    }

    /**
     * Sources current from the controller's supply when on, open when off.
     *
     * @param rating the most it may carry
     * @param saturation volts left across it at its rating
     * @param pulse how long it is on, when it is not steady
     * @param bodyDiode whether a diode conducts from the lead to the supply when off
     * @param pause how long it is off before it is on again, when said
     * @param rush the most it may carry at the instant something is switched on, when said or usual
     */
    record HighSide(
            Figure<Amps> rating,
            Figure<Volts> saturation,
            Optional<Figure<Seconds>> pulse,
            boolean bodyDiode,
            Optional<Figure<Seconds>> pause,
            Optional<Figure<Amps>> rush)
            implements Port {
        /** An output of which it is not said how fast it goes on and off, nor what it carries at first. */
        public HighSide(
                Figure<Amps> rating, Figure<Volts> saturation, Optional<Figure<Seconds>> pulse, boolean bodyDiode) {
            this(rating, saturation, pulse, bodyDiode, Optional.empty(), Optional.empty());
        }
    }

    /** Goes to a supplied extra (indicator, button, sensor) by its own plug and never to the vehicle. */
    record ToExtra(String extra) implements Port {}

    /** Which level of an input means something. */
    enum Active {
        LOW,
        HIGH
    }
}
