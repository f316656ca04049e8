package org.loomproof.workshop.prover.product;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.loomproof.workshop.brief.kit.Behaviour;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.prover.claim.Fitting;

/**
 * A watched light that waits and fades out once everything that works it is at rest. Until it is dark its lead may read either
 * way.
 *
 * @param circuit whose light
 * @param follows what works it
 * @param warns whether its lead is a trigger that warns first
 * @param sounds whether it is one that sounds at once
 * @param outlasted whether a light that fades when arming begins is surely dark when arming ends
 */
record Light(CircuitId circuit, Set<OperableId> follows, boolean warns, boolean sounds, boolean outlasted) {

    Light {
        follows = Set.copyOf(follows);
    }

    /** Those that triggers watch, by the plan's order. */
    static List<Light> list(Fitting fitting) {
        Behaviour behaviour = fitting.brief().kit().behaviour();
        double arming = behaviour.armingDelay().low().value();
        List<Light> lights = new ArrayList<>();
        for (Hookup.Connect connect : fitting.connected()) {
            if (behaviour.triggers().contains(connect.lead())) {
                boolean instant = behaviour.instantTriggers().contains(connect.lead());
                connect.circuits().stream()
                        .map(fitting.brief().sheet()::circuit)
                        .forEach(circuit -> circuit.switching()
                                .lingers()
                                .map(lingers -> new Light(
                                        circuit.id(),
                                        Set.copyOf(circuit.follows()),
                                        !instant,
                                        instant,
                                        lingers.high().value() <= arming))
                                .ifPresent(lights::add));
            }
        }
        return lights;
    }

    /** The places in base three of how each light stands. */
    static int[] strides(List<Light> lights) {
        int[] strides = new int[lights.size() + 1];
        strides[0] = 1;
        for (int k = 0; k < lights.size(); k++) {
            strides[k + 1] = strides[k] * 3;
        }
        return strides;
    }
}
