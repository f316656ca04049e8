package org.loomproof.workshop.meter.role;

import org.loomproof.workshop.trade.table.Row;

/**
 * A wire that goes to and fro between two voltages while something is active.
 *
 * @param topLow least of the upper level, volts, or a battery's share where {@code topIsShare}
 * @param topHigh most of it
 * @param topIsShare whether the upper level follows the battery
 * @param bottomLow least of the lower level, volts
 * @param bottomHigh most of it
 * @param dutyLow least share of time at the upper level
 * @param dutyHigh most of it
 * @param ohmsLow least inner resistance
 * @param ohmsHigh most of it
 * @param when what it is active with
 * @param idle the level else: {@code ground}, {@code supply}, {@code open} or volts
 */
record PulsedWire(
        double topLow,
        double topHigh,
        boolean topIsShare,
        double bottomLow,
        double bottomHigh,
        double dutyLow,
        double dutyHigh,
        double ohmsLow,
        double ohmsHigh,
        When when,
        String idle) {

    /** What such a wire is active with. */
    enum When {
        AWAKE,
        TURNING,
        WORKED
    }

    static PulsedWire of(Row row) {
        String top = row.text("top-low");
        return new PulsedWire(
                number(top),
                number(row.text("top-high")),
                top.endsWith("B"),
                row.number("bottom-low"),
                row.number("bottom-high"),
                row.number("duty-low"),
                row.number("duty-high"),
                row.number("ohms-low"),
                row.number("ohms-high"),
                When.valueOf(row.text("when").toUpperCase(java.util.Locale.ROOT)),
                row.text("idle"));
    }

    private static double number(String cell) {
        return Double.parseDouble(cell.replace("B", ""));
    }
}
