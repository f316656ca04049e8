package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.network.solve.SolveOutcome;
import org.loomproof.network.solve.Solver;
import org.loomproof.testing.Note;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.ControllerState;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.explore.Working.Reads;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.ControllerFeed;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Corner.Taken;
import org.loomproof.workshop.wiring.RangedFigure;
import org.loomproof.workshop.wiring.Settings;
import org.loomproof.workshop.wiring.Situation;
import org.loomproof.workshop.wiring.VehicleWiring;
import org.loomproof.workshop.wiring.Wired;

/**
 * Where a lead gives a lock wire one of its steps through a resistor, each of the body computer's thresholds reads what it
 * reads of the car's own button: at every corner of every range of the job, one by one, at each supply point. The prover
 * looks at the worst corner it can find; here none is left out.
 */
class StepCornersTest {

    /** Two to this power corners are solved at each of five supply points. */
    private static final int MOST_RANGES = 12;

    @Test
    void severalExamplesHaveSuchAResistor() {
        assertThat(steppedLocks()).hasSizeGreaterThanOrEqualTo(3);
    }

    @ParameterizedTest
    @MethodSource("steppedLocks")
    void theResistorLandsInTheWindowAtEveryCornerOfTheTolerances(Path folder) {
        Brief brief = ExamplesAreReadTest.brief(folder);
        Plan plan = PlannedExamples.job(folder).plan();
        List<RangedFigure> ranges =
                VehicleWiring.fitted(brief, plan, Corner.TYPICAL).ranged();
        assertThat(ranges).hasSizeLessThanOrEqualTo(MOST_RANGES);
        plan.parts().stream()
                .filter(AddedPart.Resistor.class::isInstance)
                .forEach(r -> assertThat(ranges).anyMatch(f -> f.key().equals(r.id() + " resistance")));

        int readings = 0;
        for (Hookup.Connect lead : locks(plan)) {
            Map<ElementId, Reads> own = ownReadings(brief, lead);
            for (int bits = 0; bits < 1 << ranges.size(); bits++) {
                Wired fitted = VehicleWiring.fitted(brief, plan, corner(ranges, bits));
                Solver solver = Solver.of(fitted.network());
                for (SupplyPoint supply : SupplyPoint.values()) {
                    OperatingPoint point = solved(solver, fitted, brief, supply, state(brief, lead), new TreeMap<>());
                    own.forEach((input, reads) -> assertThat(reads(fitted, point, input))
                            .as("%s", input)
                            .isEqualTo(reads));
                    readings += own.size();
                }
            }
        }
        assertThat(readings).isPositive();
        Note.that("%s: %d ranges, %d readings at all their corners"
                .formatted(ExampleFiles.root().relativize(folder), ranges.size(), readings));
    }

    static List<Path> steppedLocks() {
        List<Path> stepped = new ArrayList<>();
        for (Path folder : ExampleFiles.list()) {
            if (folder.getFileName().toString().startsWith("locks-on-")) {
                stepped.add(folder);
            }
        }
        return stepped;
    }

    private static List<Hookup.Connect> locks(Plan plan) {
        List<Hookup.Connect> locks = plan.hookups().stream()
                .filter(Hookup.Connect.class::isInstance)
                .map(Hookup.Connect.class::cast)
                .filter(connect -> connect.serves() == Wish.LOCKS)
                .toList();
        assertThat(locks).hasSize(2);
        return locks;
    }

    /** What each threshold of the stock car reads while the car's own switch works the lead's circuit. */
    private static Map<ElementId, Reads> ownReadings(Brief brief, Hookup.Connect lead) {
        Circuit circuit = brief.sheet().circuit(lead.circuits().getFirst());
        OperableId control = circuit.follows().getFirst();
        TreeMap<OperableId, String> pressed = new TreeMap<>();
        pressed.put(control, circuit.role().word());
        Wired stock = VehicleWiring.stock(brief.sheet(), Corner.TYPICAL);
        OperatingPoint point =
                solved(Solver.of(stock.network()), stock, brief, SupplyPoint.REST, ControllerState.DISARMED, pressed);
        Map<ElementId, Reads> own = new TreeMap<>();
        stock.factory().inputs().keySet().forEach(input -> own.put(input, reads(stock, point, input)));
        assertThat(own).isNotEmpty().doesNotContainValue(Reads.BETWEEN);
        return own;
    }

    private static ControllerState state(Brief brief, Hookup.Connect lead) {
        for (ControllerState state : ControllerState.values()) {
            if (brief.kit().behaviour().isOn(lead.lead(), state)) {
                return state;
            }
        }
        throw new IllegalArgumentException(lead.lead() + " never acts");
    }

    private static Corner corner(List<RangedFigure> ranges, int bits) {
        Corner corner = Corner.TYPICAL;
        for (int i = 0; i < ranges.size(); i++) {
            corner = corner.with(ranges.get(i).key(), (bits >> i & 1) == 0 ? Taken.LOW : Taken.HIGH);
        }
        return corner;
    }

    private static Reads reads(Wired wired, OperatingPoint point, ElementId input) {
        var reach = Objects.requireNonNull(wired.factory().inputs().get(input));
        return Reads.of(reach, point.volts(reach.wire()) - point.volts(reach.ground()));
    }

    private static OperatingPoint solved(
            Solver solver,
            Wired wired,
            Brief brief,
            SupplyPoint supply,
            ControllerState state,
            SortedMap<OperableId, String> positions) {
        SolveOutcome outcome =
                solver.solve(new Settings(wired, brief.sheet(), brief.kit().behaviour())
                        .of(new Situation(positions, supply, state, ControllerFeed.WHOLE)));
        assertThat(outcome).isInstanceOf(SolveOutcome.Settled.class);
        return ((SolveOutcome.Settled) outcome).point();
    }
}
