package org.loomproof.workshop.brief.kit;

import java.util.Locale;
import java.util.Optional;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Decibels;
import org.loomproof.workshop.quantity.Ohms;
import org.loomproof.workshop.quantity.Volts;

/**
 * Something that comes in the box beside the controller.
 *
 * @param name what the kit calls it
 * @param kind what it is
 * @param draws what it draws when it works, where it is a load
 * @param coil coil resistance, where it is a relay
 * @param makeRating what its make contact (87) may carry, where it is a relay
 * @param breakRating what its break contact (87a) may carry, where it is a relay
 * @param sound how loud it is 2 m in front of it, where it is a sounder
 * @param forward volts across it at what it draws, where it is a light-emitting diode without a resistor of its own
 * @param battery the battery in it, where it is a sounder that feeds itself
 */
public record Extra(
        String name,
        Kind kind,
        Optional<Figure<Amps>> draws,
        Optional<Figure<Ohms>> coil,
        Optional<Figure<Amps>> makeRating,
        Optional<Figure<Amps>> breakRating,
        Optional<Figure<Decibels>> sound,
        Optional<Figure<Volts>> forward,
        Optional<Battery> battery) {

    /**
     * The battery of a sounder that feeds itself.
     *
     * @param charging what it draws while it charges
     * @param charged what it draws once it is full; empty where nobody says, and then it is reckoned as charging for good
     */
    public record Battery(Figure<Amps> charging, Optional<Figure<Amps>> charged) {}

    /** Something of which nobody says how loud it is. */
    public Extra(
            String name,
            Kind kind,
            Optional<Figure<Amps>> draws,
            Optional<Figure<Ohms>> coil,
            Optional<Figure<Amps>> makeRating,
            Optional<Figure<Amps>> breakRating) {
        this(name, kind, draws, coil, makeRating, breakRating, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** Something that is no bare light-emitting diode. */
    public Extra(
            String name,
            Kind kind,
            Optional<Figure<Amps>> draws,
            Optional<Figure<Ohms>> coil,
            Optional<Figure<Amps>> makeRating,
            Optional<Figure<Amps>> breakRating,
            Optional<Figure<Decibels>> sound) {
        this(name, kind, draws, coil, makeRating, breakRating, sound, Optional.empty(), Optional.empty());
    }

    /** What sort of thing comes in the box. */
    public enum Kind {
        INDICATOR,
        OVERRIDE_BUTTON,
        SHOCK_SENSOR,
        SOUNDER,
        ACTUATOR,
        INTERRUPT_RELAY,
        RELAY_SOCKET,
        OTHER;

        /** The word used in files, such as {@code shock-sensor}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }
}
