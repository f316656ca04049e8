package org.loomproof.workshop.meter.expected;

import java.util.List;
import org.loomproof.workshop.brief.sheet.CircuitId;

/**
 * All that a meter must show at one circuit of a plan.
 *
 * @param circuit which
 * @param whole the wire as it was found, situation by situation; empty where nobody may measure it
 * @param cut its two ends once it is cut; empty where the plan does not cut it
 * @param alike what else shows the same
 */
public record CircuitReadings(
        CircuitId circuit, List<ExpectedReading> whole, List<ExpectedReading> cut, List<LookAlike> alike) {

    public CircuitReadings {
        whole = List.copyOf(whole);
        cut = List.copyOf(cut);
        alike = List.copyOf(alike);
    }
}
