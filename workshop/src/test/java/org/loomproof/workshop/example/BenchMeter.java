package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Objects;
import java.util.TreeMap;
import org.assertj.core.data.Percentage;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.network.solve.SolveOutcome;
import org.loomproof.network.solve.Solver;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.wiring.Settings;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.wiring.Wired;

/** Reads volts and amps of a vehicle in one situation, straight from the engine. */
final class BenchMeter {
    /** By hand, small resistances are left out. */
    static final Percentage BY_HAND = Percentage.withPercentage(3);

    private final Brief brief;
    private final Wired wired;

    BenchMeter(Brief brief, Wired wired) {
        this.brief = brief;
        this.wired = wired;
    }

    /** What a meter shows where the figure was worked out. */
    double reads(Expected.HandWorked figure) {
        TreeMap<OperableId, String> positions = new TreeMap<>();
        figure.positions().forEach((id, position) -> {
            assertThat(brief.sheet().operable(new OperableId(id)).positions()).contains(position);
            positions.put(new OperableId(id), position);
        });
        Situation situation = new Situation(
                positions,
                SupplyPoint.valueOf(figure.supply().toUpperCase(Locale.ROOT)),
                ControllerState.valueOf(figure.controller().toUpperCase(Locale.ROOT)),
                ControllerFeed.WHOLE);
        SolveOutcome outcome = Solver.of(wired.network())
                .solve(new Settings(wired, brief.sheet(), brief.kit().behaviour()).of(situation));
        assertThat(outcome).isInstanceOf(SolveOutcome.Settled.class);
        return reads(figure, ((SolveOutcome.Settled) outcome).point());
    }

    private double reads(Expected.HandWorked figure, OperatingPoint point) {
        return switch (figure.target()) {
            case CIRCUIT -> {
                assertThat(figure.volts()).isTrue();
                yield point.volts(
                        Objects.requireNonNull(wired.factory().before().get(new CircuitId(figure.name()))));
            }
            case ELEMENT -> reads(figure, point, wired.factory().loads().get(new ElementId(figure.name())));
            case PART -> reads(figure, point, wired.added().parts().get(new AddedPartId(figure.name())));
        };
    }

    private static double reads(
            Expected.HandWorked figure, OperatingPoint point, @org.jspecify.annotations.Nullable Reach at) {
        Reach reach = Objects.requireNonNull(at, figure.name());
        return figure.volts() ? point.volts(reach.from()) - point.volts(reach.to()) : point.amps(reach.part());
    }
}
