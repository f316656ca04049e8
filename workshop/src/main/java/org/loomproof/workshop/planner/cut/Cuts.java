package org.loomproof.workshop.planner.cut;

import java.util.List;
import org.loomproof.workshop.planner.coupling.Driving.Side;

/**
 * Outputs that work what hangs on cut wires, as far as poles decide: what is the same for every amount of current.
 *
 * @param wires that are cut
 * @param outputs that work the relays
 */
public record Cuts(List<CutWire> wires, List<Output> outputs) {

    public Cuts {
        wires = List.copyOf(wires);
        outputs = List.copyOf(outputs);
    }

    /**
     * One output.
     *
     * @param gives its pole
     * @param leaks whether current can get from a coil into a controller that has lost a feed
     */
    public record Output(Side gives, boolean leaks) {}
}
