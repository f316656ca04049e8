package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.VehicleWiring;

/**
 * The engine against the figures of the stock vehicle that the READMEs of the examples work out by hand. Those of the fitted
 * vehicle are looked at with the plan.
 */
class HandWorkedFiguresTest {
    @Test
    void everyExampleHasOne() {
        assertThat(ExampleFiles.list())
                .allSatisfy(folder -> assertThat(Expected.of(folder).handWorked())
                        .as("%s", folder)
                        .isNotEmpty());
    }

    @ParameterizedTest
    @MethodSource("figures")
    void theEngineAgreesWithTheHandWorkedFigure(Path folder, Expected.HandWorked figure) {
        Brief brief = ExamplesAreReadTest.brief(folder);
        BenchMeter meter = new BenchMeter(brief, VehicleWiring.stock(brief.sheet(), Corner.TYPICAL));
        assertThat(meter.reads(figure)).isCloseTo(figure.value(), BenchMeter.BY_HAND);
    }

    static List<Arguments> figures() {
        List<Arguments> all = new ArrayList<>();
        for (Path folder : ExampleFiles.list()) {
            Expected.of(folder).handWorked().stream()
                    .filter(figure -> !figure.fitted())
                    .forEach(figure -> all.add(Arguments.of(folder, figure)));
        }
        return all;
    }
}
