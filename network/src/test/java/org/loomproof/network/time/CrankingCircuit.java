package org.loomproof.network.time;

import static org.loomproof.network.TestNetwork.at;
import static org.loomproof.network.TestNetwork.id;
import static org.loomproof.network.TestNetwork.network;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.part.Capacitor;
import org.loomproof.network.part.DiodeModel;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.Switch;
import org.loomproof.network.reference.Course;

/**
 * 100 ms of a supply that is cranked while a coil is switched: 85 Ω and 0.25 H with 10 kΩ and 1 nF across, a clamp diode, a
 * switch of 0.5 Ω to the chassis, and a logic supply held up by 470 uF behind a diode.
 */
public final class CrankingCircuit {
    static final double END = 0.1;
    static final Node COIL = at("low");
    static final Node HELD_UP = at("logic");

    static final Network NETWORK = network()
            .battery("battery", "plus", "0", 12.6, 0.02)
            .part(new Relay(id("k"), at("plus"), COIL, 85, 7, 1.2, List.of(), 1e-3).timed(0.25, 4e-3, 3e-3))
            .resistor("damping", "plus", "low", 10e3)
            .part(new Capacitor(id("winding"), at("plus"), COIL, 1e-9))
            .diode("clamp", "low", "plus", DiodeModel.SILICON_1A)
            .part(new Switch(id("s"), COIL, Node.CHASSIS, 0.5))
            .diode("hold", "plus", "logic", DiodeModel.SILICON_1A)
            .part(new Capacitor(id("hold-up"), HELD_UP, Node.CHASSIS, 470e-6, 0.05))
            .resistor("controller", "logic", "0", 150)
            .build();

    /** When the switch is closed, opened, closed, opened. */
    private static final double[] THROWN = {0.005, 0.025, 0.050, 0.075};

    private static final TimeSolver SOLVER = TimeSolver.of(NETWORK);

    private CrankingCircuit() {}

    static Timeline timeline() {
        return timelineFrom(0);
    }

    /** The same, so many seconds later. */
    static Timeline timelineFrom(double start) {
        Timeline timeline = Timeline.settled(NETWORK.atRest()).supply(id("battery"), cranking(start));
        for (int k = 0; k < THROWN.length; k++) {
            boolean closes = k % 2 == 0;
            timeline = timeline.then(start + THROWN[k], s -> closes ? s.closed(id("s")) : s.open(id("s")));
        }
        return timeline;
    }

    private static Waveform cranking(double start) {
        return Waveform.of(start + 0.040, 12.6, start + 0.042, 7, start + 0.060, 8, start + 0.070, 12.6);
    }

    /** The same as the reference is told of it. */
    public static Course course() {
        List<Course.Thrown> thrown = Arrays.stream(THROWN)
                .mapToObj(t -> new Course.Thrown(t, id("s")))
                .toList();
        return new Course(timeline(), thrown, Map.of(id("battery"), cranking(0)), END);
    }

    static Trace run(TimeOptions options) {
        return SOLVER.run(timeline(), END, options).finishedTrace();
    }
}
