package org.loomproof.network.part;

import java.util.List;

/**
 * A motor with permanent magnets and a load that grows with its speed: v = R i + L di/dt + e, with the back-EMF e in step
 * with the speed. Torque and speed seen from the armature are a current and a voltage: inertia is a capacitance, the load a
 * conductance across it. Stalled when the setting says so: e is held at nothing and only R is left.
 *
 * @param armatureOhms R with brushes, above zero
 * @param henries L, zero or more
 * @param ratedVolts voltage of the rating
 * @param runAmps current at that voltage once it has run up, below the stall current
 * @param runUpSeconds time to 63 % of the final speed at rated voltage
 */
public record Motor(
        PartId id,
        Node a,
        Node b,
        double armatureOhms,
        double henries,
        double ratedVolts,
        double runAmps,
        double runUpSeconds)
        implements Part {
    public Motor {
        Require.positive(armatureOhms, "armature ohms", id);
        Require.notNegative(henries, "henries", id);
        Require.positive(ratedVolts, "rated volts", id);
        Require.positive(runAmps, "run amps", id);
        Require.positive(runUpSeconds, "run-up seconds", id);
        Require.that(runAmps * armatureOhms < ratedVolts, "it must draw less running than stalled", id);
    }

    /** Current at rated volts when held still. */
    public double stallAmps() {
        return ratedVolts / armatureOhms;
    }

    /** e at rated volts once it has run up. */
    public double ratedBackVolts() {
        return ratedVolts - runAmps * armatureOhms;
    }

    /** What the load looks like from the armature: run amps over back-EMF. */
    public double loadSiemens() {
        return runAmps / ratedBackVolts();
    }

    /** What the inertia looks like from the armature: run-up time over armature and load resistance side by side. */
    public double inertiaFarads() {
        return runUpSeconds * (1 / armatureOhms + loadSiemens());
    }

    @Override
    public List<Pin> pins() {
        return List.of(new Pin("a", a), new Pin("b", b));
    }
}
