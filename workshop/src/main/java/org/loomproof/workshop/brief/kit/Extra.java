package org.loomproof.workshop.brief.kit;

import java.util.Locale;
import java.util.Optional;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Ohms;

/**
 * Something that comes in the box beside the controller.
 *
 * @param name what the kit calls it
 * @param kind what it is
 * @param draws what it draws when it works, where it is a load
 * @param coil coil resistance, where it is a relay
 * @param makeRating what its make contact (87) may carry, where it is a relay
 * @param breakRating what its break contact (87a) may carry, where it is a relay
 */
public record Extra(
        String name,
        Kind kind,
        Optional<Figure<Amps>> draws,
        Optional<Figure<Ohms>> coil,
        Optional<Figure<Amps>> makeRating,
        Optional<Figure<Amps>> breakRating) {

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
