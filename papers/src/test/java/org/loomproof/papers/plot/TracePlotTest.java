package org.loomproof.papers.plot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Capacitor;
import org.loomproof.network.part.Contact;
import org.loomproof.network.part.Diode;
import org.loomproof.network.part.DiodeModel;
import org.loomproof.network.part.Lamp;
import org.loomproof.network.part.LogicInput;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Relay;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.part.Switch;
import org.loomproof.network.time.TimeSolver;
import org.loomproof.network.time.Timeline;
import org.loomproof.network.time.Trace;
import org.loomproof.network.time.Waveform;
import org.loomproof.papers.markup.MarkupWriter;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.words.Messages;

class TracePlotTest {
    private static final Node PLUS = new Node("supply");
    private static final Node COIL = new Node("coil switched end");
    private static final Node SENSE = new Node("sense");
    private static final PartId LAMP = new PartId("lamp");
    private static final PartId RELAY = new PartId("relay");

    /** A relay that works a lamp through a cranked supply, and an input that looks on. */
    private static Trace trace() {
        Node lit = new Node("lit");
        Network network = Network.builder()
                .add(new Battery(new PartId("battery"), PLUS, Node.CHASSIS, 12.6, 0.02))
                .add(new Relay(RELAY, PLUS, COIL, 85, 7, 1.5, List.of(Contact.make(PLUS, lit)), 2e-3)
                        .timed(0.25, 4e-3, 3e-3))
                .add(new Resistor(new PartId("damping"), PLUS, COIL, 330))
                .add(new Switch(new PartId("s"), COIL, Node.CHASSIS, 0.1))
                .add(new Lamp(LAMP, lit, Node.CHASSIS, 12, 21, 0.08, 0.05))
                .add(new Diode(new PartId("hold"), PLUS, SENSE, DiodeModel.SILICON_1A))
                .add(new Capacitor(new PartId("hold-up"), SENSE, Node.CHASSIS, 47e-6, 0.05))
                .add(new LogicInput(
                        new PartId("input"),
                        SENSE,
                        PLUS,
                        Node.CHASSIS,
                        OptionalDouble.empty(),
                        OptionalDouble.of(470),
                        7,
                        10,
                        false))
                .build();
        Timeline timeline = Timeline.settled(network.atRest())
                .supply(new PartId("battery"), Waveform.of(0.05, 12.6, 0.052, 6.5, 0.08, 8, 0.1, 12.6))
                .then(0.01, s -> s.closed(new PartId("s")))
                .then(0.12, s -> s.open(new PartId("s")));
        return TimeSolver.of(network).run(timeline, 0.16).finishedTrace();
    }

    private static String plot() {
        return MarkupWriter.xml(TracePlot.of(
                trace(),
                "A lamp relay through cranking",
                List.of(PLUS, COIL, SENSE),
                List.of(LAMP, RELAY),
                new Wording(Messages.english())));
    }

    @Test
    void bothUnitsTheTimeScaleAndEveryNameAreThere() {
        assertThat(plot())
                .contains(">Volts<", ">Amps<", ">Milliseconds<", ">supply<", ">sense<", ">lamp<", ">relay pulled in<")
                .contains("A lamp relay through cranking");
    }

    @Test
    void theSameTraceGivesTheSamePicture() {
        assertThat(plot()).isEqualTo(plot());
    }

    /** The coil's kick is the highest point drawn: 12.6 V over 85 Ω through 330 Ω on top of the supply, within the frame. */
    @Test
    void theKickOfTheCoilIsDrawnAtItsHeight() {
        String svg = plot();
        Matcher path =
                Pattern.compile("<path d=\"([^\"]*)\"[^>]*stroke=\"#d55e00\"").matcher(svg);
        double top = Double.POSITIVE_INFINITY;
        while (path.find()) {
            for (String point : path.group(1).substring(1).split("L", -1)) {
                top = Math.min(top, Double.parseDouble(point.strip().split(" ", -1)[1]));
            }
        }
        // Volts 0 to 80 over 150 points from 184 up.
        double kick = 12.5 + 12.5 / 85 * 330;
        assertThat(top).isCloseTo(184 - 150 * kick / 80, within(1.0));
    }

    @Test
    void aHairBelowZeroNeedsNoTickBelowZero() {
        assertThat(Axis.onTicks(-1e-9, 22, 6).low()).isZero();
    }

    @Test
    void ticksAreRoundNumbers() {
        assertThat(Axis.onTicks(-3.2, 61, 6).ticks()).containsExactly(-20.0, 0.0, 20.0, 40.0, 60.0, 80.0);
        assertThat(Axis.onTicks(0, 0.0013, 6).decimals()).isEqualTo(4);
        assertThat(Axis.exact(0, 160, 10).ticks()).contains(0.0, 20.0, 160.0);
        assertThat(Axis.onTicks(5, 5, 6).ticks()).hasSizeGreaterThan(1);
    }
}
