package org.loomproof.workshop.meter.shock;

/**
 * A knock given while the sensor stood at a setting.
 *
 * @param setting of the sensor: its own scale, more is more sensitive
 * @param knock with what, and from how high
 * @param noticed whether the sensor answered
 */
public record Blow(double setting, Knock knock, boolean noticed) {

    /** What it brings to the spot, in joules. */
    public double joules() {
        return knock.joules();
    }
}
