package org.loomproof.workshop.brief.sheet;

import java.util.Optional;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.quantity.AmpHours;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.quantity.Volts;

/**
 * What is said of the vehicle as a whole.
 *
 * @param name what the shop calls the vehicle
 * @param systemVoltage nominal, 12 V for what we do
 * @param groundPolarity which battery pole is on the body
 * @param gearbox how it changes gear
 * @param drive what drives it
 * @param start how it is started
 * @param key what sort of key
 * @param steering which side the driver sits
 * @param restraints where the restraint (yellow) loom runs, as free text; empty when not said
 * @param dataBus what is known of data wires; empty when not said
 * @param factoryAlarm what factory alarm there is; empty when none
 * @param batteryCapacity at the 20-hour rate
 * @param batteryAgeYears empty when not said
 * @param sleepCurrent drawn with everything asleep
 */
public record VehicleFacts(
        String name,
        Volts systemVoltage,
        GroundPolarity groundPolarity,
        Gearbox gearbox,
        Drive drive,
        Start start,
        Key key,
        Steering steering,
        String restraints,
        String dataBus,
        String factoryAlarm,
        Figure<AmpHours> batteryCapacity,
        Optional<Double> batteryAgeYears,
        Figure<Amps> sleepCurrent) {

    /** Which battery pole is joined to the body. */
    public enum GroundPolarity {
        NEGATIVE,
        POSITIVE
    }

    /** How it changes gear. */
    public enum Gearbox {
        MANUAL,
        AUTOMATIC,
        NOT_SAID
    }

    /** What drives it. */
    public enum Drive {
        COMBUSTION,
        HYBRID,
        ELECTRIC
    }

    /** How the driver starts it. */
    public enum Start {
        KEY,
        BUTTON,
        DATA_ONLY
    }

    /** What sort of key it has. */
    public enum Key {
        PLAIN,
        TRANSPONDER,
        PROXIMITY
    }

    /** Which side the driver sits. */
    public enum Steering {
        LEFT,
        RIGHT
    }
}
