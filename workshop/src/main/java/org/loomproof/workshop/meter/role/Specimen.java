package org.loomproof.workshop.meter.role;

import java.util.OptionalDouble;
import org.loomproof.workshop.meter.reading.Step.KeyAt;

/** One drawn wire in one drawn car. */
interface Specimen {

    /** What a meter shows on it. */
    Shows at(Setup setup);

    /** What an ohmmeter shows from it to the body with the batteries out; empty for an open line. */
    OptionalDouble ohms(Setup setup);

    /**
     * Volts at this car's battery, where nobody measured them. Common practice, no published source.
     *
     * @param share where the car lies between the least and the most, 0 to 1
     */
    static double battery(KeyAt key, double share) {
        double low = switch (key) {
            case NO_KEY, OFF -> 11.7;
            case ACCESSORY, ON -> 11.55;
            case CRANKING -> 8.8;
            case RUNNING -> 13.5;
        };
        double high = switch (key) {
            case NO_KEY, OFF -> 13.1;
            case ACCESSORY, ON -> 12.95;
            case CRANKING -> 11.3;
            case RUNNING -> 14.7;
        };
        return low + share * (high - low);
    }
}
