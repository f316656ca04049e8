package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.TreeMap;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.network.solve.SolveOutcome;
import org.loomproof.network.solve.Solver;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.read.ReadBrief;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.wiring.Settings;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.wiring.VehicleWiring;
import org.loomproof.workshop.wiring.Wired;

/** The engine against the figures that the READMEs of the examples work out by hand. */
class HandWorkedFiguresTest {
    /** By hand, small resistances are left out. */
    private static final Percentage BY_HAND = Percentage.withPercentage(3);

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
        Brief brief = ((Checked.Good<ReadBrief>) ExamplesAreReadTest.read(folder))
                .value()
                .brief();
        assertThat(figure.fitted())
                .as("figures of the fitted vehicle are looked at with the plan")
                .isFalse();
        Wired wired = VehicleWiring.stock(brief.sheet(), Corner.TYPICAL);
        TreeMap<OperableId, String> positions = new TreeMap<>();
        figure.positions().forEach((id, position) -> {
            assertThat(brief.sheet().operable(new OperableId(id)).positions()).contains(position);
            positions.put(new OperableId(id), position);
        });
        Situation situation = new Situation(
                positions,
                SupplyPoint.valueOf(figure.supply().toUpperCase(Locale.ROOT)),
                ControllerState.DISARMED,
                ControllerFeed.WHOLE);
        SolveOutcome outcome = Solver.of(wired.network())
                .solve(new Settings(wired, brief.sheet(), brief.kit().behaviour()).of(situation));
        assertThat(outcome).isInstanceOf(SolveOutcome.Settled.class);
        OperatingPoint point = ((SolveOutcome.Settled) outcome).point();
        Reach reach = Objects.requireNonNull(wired.factory().loads().get(new ElementId(figure.element())));
        double seen = figure.volts() ? point.volts(reach.from()) - point.volts(reach.to()) : point.amps(reach.part());
        assertThat(seen).isCloseTo(figure.value(), BY_HAND);
    }

    static List<Arguments> figures() {
        List<Arguments> all = new ArrayList<>();
        for (Path folder : ExampleFiles.list()) {
            Expected.of(folder).handWorked().forEach(figure -> all.add(Arguments.of(folder, figure)));
        }
        return all;
    }
}
