package org.loomproof.workshop.meter.role;

/**
 * What one drawn wire shows in one setup.
 *
 * @param voltsAt10 with 10 V at the battery's posts; the mean where it goes to and fro
 * @param voltsAt14 with 14 V
 * @param swing volts from peak to peak where it goes to and fro; 0 where it stands
 * @param floats whether nothing holds the wire
 */
public record Shows(double voltsAt10, double voltsAt14, double swing, boolean floats) {

    private static final double LEAST_SWING = 0.3;

    /**
     * Volts at another battery voltage, on the straight line through the two that were solved: exact where parts are
     * straight, and what lamps and diodes bend lies below a meter's last digit at its 10 MΩ.
     */
    public double volts(double battery) {
        return voltsAt10 + (voltsAt14 - voltsAt10) * (battery - 10) / 4;
    }

    /** True where a meter sees it move. */
    public boolean pulses() {
        return swing > LEAST_SWING;
    }
}
