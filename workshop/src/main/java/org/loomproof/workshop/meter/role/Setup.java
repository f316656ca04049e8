package org.loomproof.workshop.meter.role;

import java.util.Collections;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.loomproof.workshop.brief.sheet.OperableId;

/**
 * How a car and a meter stand while one reading is taken, as far as a network is concerned. Readings of equal setups differ
 * by the battery alone.
 *
 * @param positions of everything that is operated; what is not named is at rest
 * @param asleep whether modules sleep that can
 * @param resistorOhms from the wire to the body, if one hangs there
 * @param meterOhms the meter's input resistance
 */
public record Setup(
        SortedMap<OperableId, String> positions, boolean asleep, OptionalDouble resistorOhms, double meterOhms) {

    public Setup {
        positions = Collections.unmodifiableSortedMap(new TreeMap<>(positions));
    }

    /** The position of one operable, or the given one where it is not named. */
    String position(OperableId id, String rest) {
        return ((Map<OperableId, String>) positions).getOrDefault(id, rest);
    }
}
