package org.loomproof.shop.job;

import java.util.List;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.meter.expected.CircuitReadings;

/**
 * What a meter must show in a car before a plan is carried out.
 *
 * @param brief what was given, completed
 * @param circuits in the plan's order
 */
public record CarReadings(Brief brief, List<CircuitReadings> circuits) {

    public CarReadings {
        circuits = List.copyOf(circuits);
    }
}
