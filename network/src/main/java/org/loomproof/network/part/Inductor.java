package org.loomproof.network.part;

import java.util.List;

/**
 * A coil of wire: v = R i + L di/dt. A choke, a solenoid, a valve. In a steady state only its winding's resistance is left.
 *
 * @param henries above zero
 * @param windingOhms above zero
 */
public record Inductor(PartId id, Node a, Node b, double henries, double windingOhms) implements Part {
    public Inductor {
        Require.positive(henries, "henries", id);
        Require.positive(windingOhms, "winding ohms", id);
    }

    /** A solenoid as its label states it: so many watts at so many volts in a steady state. */
    public static Inductor solenoid(PartId id, Node a, Node b, double ratedVolts, double ratedWatts, double henries) {
        return new Inductor(id, a, b, henries, ratedVolts * ratedVolts / ratedWatts);
    }

    @Override
    public List<Pin> pins() {
        return List.of(new Pin("a", a), new Pin("b", b));
    }
}
