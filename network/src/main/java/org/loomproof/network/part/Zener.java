package org.loomproof.network.part;

import java.util.List;

/**
 * A diode that also conducts backwards once the reverse voltage reaches its zener voltage; a one-way transient suppressor
 * too.
 *
 * @param forward the ordinary direction
 * @param breakdown the reverse direction
 */
public record Zener(PartId id, Node anode, Node cathode, DiodeModel forward, Breakdown breakdown) implements Part {
    /** Of a small silicon type, {@code volts} at 5 mA with 10 Ω; common practice, no published source. */
    public static Zener small(PartId id, Node anode, Node cathode, double volts) {
        return new Zener(id, anode, cathode, DiodeModel.SILICON_SIGNAL, new Breakdown(volts, 5e-3, 10));
    }

    @Override
    public List<Pin> pins() {
        return List.of(new Pin("anode", anode), new Pin("cathode", cathode));
    }
}
