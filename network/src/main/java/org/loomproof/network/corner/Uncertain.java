package org.loomproof.network.corner;

import java.util.LinkedHashMap;
import java.util.Map;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Copper;
import org.loomproof.network.part.PartId;

/**
 * Something that may lie anywhere between two values.
 *
 * @param name as it is told in a corner
 * @param low the least it may be, in the unit of what it is, not above {@code high}
 * @param high the most it may be, in the same unit
 * @param change what a value does to a setting
 * @param oneElement whether it moves one resistance or one source only, on which proofs of extremes lean
 */
public record Uncertain(String name, double low, double high, Change change, boolean oneElement) {
    /** A setting with the value put in. */
    public interface Change {
        Setting apply(Setting setting, double value);
    }

    public Uncertain {
        if (!(low <= high) || Double.isInfinite(low) || Double.isInfinite(high)) {
            throw new IllegalArgumentException(name + " needs a finite range, was " + low + " to " + high);
        }
    }

    /** The resistance of a resistor, wire, fuse, meter, inductor or relay coil. */
    public static Uncertain ohms(PartId id, double low, double high) {
        return new Uncertain(id + " ohms", low, high, (setting, value) -> setting.ohms(id, value), true);
    }

    /** A resistance with its tolerance, for instance 0.05 for 5 %. */
    public static Uncertain tolerance(PartId id, double ohms, double part) {
        return ohms(id, ohms * (1 - part), ohms * (1 + part));
    }

    /** The open-circuit voltage of a source. */
    public static Uncertain volts(PartId id, double low, double high) {
        return new Uncertain(id + " volts", low, high, (setting, value) -> setting.emf(id, value), true);
    }

    /**
     * The temperature of copper that runs through several parts, °C.
     *
     * @param ohmsAt20 each part's resistance at 20 °C
     */
    public static Uncertain copperCelsius(Map<PartId, Double> ohmsAt20, double low, double high) {
        Map<PartId, Double> kept = new LinkedHashMap<>(ohmsAt20);
        return new Uncertain(
                "copper celsius",
                low,
                high,
                (setting, value) -> {
                    Setting warmed = setting;
                    for (Map.Entry<PartId, Double> each : kept.entrySet()) {
                        warmed = warmed.ohms(each.getKey(), each.getValue() * Copper.temperatureFactor(value));
                    }
                    return warmed;
                },
                kept.size() == 1);
    }
}
