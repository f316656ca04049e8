package org.loomproof.network.law;

import java.util.List;
import java.util.Optional;
import org.loomproof.network.law.Term.Capacitance;
import org.loomproof.network.law.Term.Conductance;
import org.loomproof.network.law.Term.Stated;
import org.loomproof.network.part.Capacitor;
import org.loomproof.network.part.Motor;

/**
 * Armature to a node inside, whose voltage is the back-EMF; from there load and inertia as conductance and capacitance. With
 * back-EMF constant K: torque K i, speed e / K, so J d(speed)/dt = K i - b speed reads i = (J / K²) de/dt + (b / K²) e.
 */
final class MotorLaw {
    private static final int A = 0;
    private static final int B = 1;
    private static final int TURNING = 2;

    /** A stop that holds the shaft lets through a ten-thousandth of what the armature resists. */
    private static final double STOP_SHARE = 1e-4;

    private MotorLaw() {}

    static PartEquations equations(Motor motor) {
        return new PartEquations(
                List.of(
                        Conductance.ifShorted(),
                        CoilLaw.term(A, TURNING, motor.armatureOhms(), motor.henries()),
                        new Conductance(TURNING, B, motor.loadSiemens(), 0, When.ALWAYS, Stated.NOTHING),
                        Conductance.when(When.SET, TURNING, B, STOP_SHARE * motor.armatureOhms()),
                        new Capacitance(TURNING, B, motor.inertiaFarads(), Capacitor.LEAST_OHMS, When.ALWAYS)),
                1,
                Optional.empty());
    }
}
