package org.loomproof.workshop.meter.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.loomproof.network.netlist.Network;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Battery;
import org.loomproof.network.part.Meter;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;
import org.loomproof.network.part.Resistor;
import org.loomproof.network.solve.Solver;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.meter.reading.Reading;
import org.loomproof.workshop.meter.reading.Readings;
import org.loomproof.workshop.meter.reading.ReadingsReader;
import org.loomproof.workshop.problem.Checked;

class StepValuesTest {

    private static List<Reading> readings(String lines) {
        Checked<Readings> read =
                new ReadingsReader(Map.of()).read(new SourceText("r.csv", "wire,step,value,unit,battery\n" + lines));
        return ((Checked.Good<Readings>) read).value().readings();
    }

    /** Worked by hand: 5 V behind 1 kΩ; 1 kΩ halves it, 250 Ω leaves 1.00 V, 1 kΩ in the second button 2.50 V. */
    @Test
    void oneKnownResistorYieldsThePullUpAndEveryButton() {
        StepValues values = StepValues.of(readings("""
                        w,key off,5.00,V
                        w,with 1 kohm,2.50,V
                        w,pressed lock,1.00,V
                        w,pressed unlock,2.50,V
                        """)).orElseThrow();
        assertThat(values.pullUp().typical().value()).isCloseTo(1000.0, Percentage.withPercentage(0.1));
        assertThat(values.switches()).hasSize(2);
        assertThat(values.switches().getFirst().ohms().typical().value())
                .isCloseTo(250.0, Percentage.withPercentage(0.1));
        assertThat(values.switches().getLast().ohms().low().value()).isBetween(850.0, 1000.0);
        assertThat(values.switches().getLast().ohms().high().value()).isBetween(1000.0, 1150.0);
    }

    /** The engine, with a meter of 1 MΩ that loads what it measures, gives back what was put in. */
    @Test
    void theEnginesOwnReadingsGiveBackWhatWasPutIn() {
        Random random = new Random(Sample.seed());
        for (int round = 0; round < 100; round++) {
            double pullUp = Math.exp(random.nextDouble(Math.log(470), Math.log(22_000)));
            double button = Math.exp(random.nextDouble(Math.log(10), Math.log(10_000)));
            double meter = random.nextBoolean() ? 1e6 : 10e6;
            double v0 = volts(5, pullUp, Double.NaN, meter);
            double vk = volts(5, pullUp, 1000, meter);
            double v1 = volts(5, pullUp, button, meter);
            double found = StepValues.pullUp(v0, vk, 1000, meter);
            assertThat(found).isCloseTo(pullUp, Percentage.withPercentage(0.01));
            assertThat(StepValues.toBody(v0, v1, found, meter)).isCloseTo(button, Percentage.withPercentage(0.01));
        }
    }

    private static double volts(double supply, double pullUp, double toBody, double meter) {
        Node wire = new Node("wire");
        Node own = new Node("own");
        PartId hung = new PartId("hung");
        Network network = Network.builder()
                .add(new Battery(new PartId("module"), own, Node.CHASSIS, supply, 1e-3))
                .add(new Resistor(new PartId("pull-up"), own, wire, pullUp))
                .add(new Meter(new PartId("meter"), wire, Node.CHASSIS, meter))
                .add(new Resistor(hung, wire, Node.CHASSIS, 1))
                .build();
        Setting setting = network.atRest();
        setting = Double.isNaN(toBody) ? setting.broken(hung) : setting.ohms(hung, toBody);
        return Solver.of(network).solve(setting).settledPoint().volts(wire);
    }

    @Test
    void theRangeHoldsTheTruthForEveryErrorTheMeterMayMake() {
        Random random = new Random(Sample.seed());
        for (int round = 0; round < 300; round++) {
            double pullUp = Math.exp(random.nextDouble(Math.log(470), Math.log(10_000)));
            double button = Math.exp(random.nextDouble(Math.log(50), Math.log(5_000)));
            double v0 = off(volts(5, pullUp, Double.NaN, 10e6), random);
            double vk = off(volts(5, pullUp, 1000, 10e6), random);
            double v1 = off(volts(5, pullUp, button, 10e6), random);
            String lines = "w,key off,%.3f,V\nw,with 1 kohm,%.3f,V\nw,pressed lock,%.3f,V\n".formatted(v0, vk, v1);
            StepValues.of(readings(lines)).ifPresent(values -> {
                assertThat(pullUp)
                        .isBetween(
                                values.pullUp().low().value(),
                                values.pullUp().high().value());
                values.switches()
                        .forEach(b -> assertThat(button)
                                .isBetween(
                                        b.ohms().low().value(), b.ohms().high().value()));
            });
        }
    }

    /** Within ±(0.5 % + 2 counts of 1 mV). */
    private static double off(double volts, Random random) {
        return volts + (0.005 * volts + 0.002) * (2 * random.nextDouble() - 1);
    }

    @Test
    void aBatteryThatSagsBetweenReadingsIsTakenOut() {
        StepValues values = StepValues.of(readings("""
                        w,key off,12.60,V,12.6
                        w,with 1 kohm,6.00,V,12.0
                        """)).orElseThrow();
        assertThat(values.pullUp().typical().value()).isCloseTo(1000.0, Percentage.withPercentage(0.2));
    }

    @Test
    void withoutTheResistorOrOnAHardSupplyThereIsNothingToCompute() {
        assertThat(StepValues.of(readings("w,key off,5.00,V\nw,pressed lock,1.00,V\n")))
                .isEmpty();
        assertThat(StepValues.of(readings("w,key off,12.60,V\nw,with 1 kohm,12.60,V\n")))
                .satisfies(
                        v -> assertThat(v.isEmpty() || v.get().pullUp().high().value() < 20)
                                .isTrue());
    }
}
