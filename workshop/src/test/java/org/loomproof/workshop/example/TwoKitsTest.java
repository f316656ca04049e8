package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomproof.network.netlist.Setting;
import org.loomproof.network.part.Node;
import org.loomproof.network.part.PartId;
import org.loomproof.network.solve.OperatingPoint;
import org.loomproof.network.solve.SolveOutcome;
import org.loomproof.network.solve.Solver;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.Moment;
import org.loomproof.workshop.brief.sheet.ElementId;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.prover.state.Condition;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.trade.supply.SupplyPoint;
import org.loomproof.workshop.wiring.Corner;
import org.loomproof.workshop.wiring.Reach;
import org.loomproof.workshop.wiring.Situation;

/**
 * Two kits that flash one lamp wire: neither sees the other, whatever either does and whatever fuse is out. The older kit has a
 * diode of its own on the sheet, ours gets one.
 */
class TwoKitsTest {

    private static final Path LAMPS = ExampleFiles.root().resolve("circuits/lamps-with-a-kit-already-fitted");
    private static final LeadId LEAD = new LeadId("P1-2");

    /** What a diode of this size lets through the other way round: at most 50 µA hot, 1N4001 family, read. */
    private static final double LEAKS_AMPS = 50e-6;

    @TempDir
    private Path folder;

    private static Plan plan() {
        return PlannedExamples.job(LAMPS).plan();
    }

    private static OperatingPoint solved(Vehicle vehicle, Setting setting) {
        return ((SolveOutcome.Settled) Solver.of(vehicle.wired().network()).solve(setting)).point();
    }

    private static Reach element(Vehicle vehicle, String name) {
        return vehicle.wired().factory().loads().get(new ElementId(name));
    }

    private static List<Situation> everySituation(Brief brief) {
        return Condition.list(brief.kit(), false, false).stream()
                .map(Condition::representative)
                .flatMap(doing -> List.of("off", "side").stream()
                        .flatMap(light -> List.of("at-rest", "flashing").stream()
                                .map(kit -> new Situation(
                                        new TreeMap<>(Map.of(
                                                new OperableId("light-switch"), light,
                                                new OperableId("fitted-kit"), kit)),
                                        SupplyPoint.REST,
                                        doing.state(),
                                        doing.feed(),
                                        doing.moment()))))
                .toList();
    }

    /** The older box draws what it drew before, and into our lead flows nothing, in every state and under every loss of a feed. */
    @Test
    void neitherSeesTheOtherInAnyState() {
        Brief brief = ExamplesAreReadTest.brief(LAMPS);
        Vehicle stock = Vehicle.stock(brief, Corner.TYPICAL);
        Vehicle fitted = Vehicle.fitted(brief, plan(), Corner.TYPICAL);
        List<Situation> all = everySituation(brief);
        assertThat(all).hasSizeGreaterThan(40);
        for (Situation situation : all) {
            OperatingPoint before = solved(stock, stock.settings().of(situation));
            OperatingPoint after = solved(fitted, fitted.settings().of(situation));
            Reach box = element(fitted, "fitted-box");
            assertThat(after.amps(box.part()))
                    .as("%s", situation)
                    .isCloseTo(before.amps(element(stock, "fitted-box").part()), org.assertj.core.api.Assertions.within(1e-4));
            Reach output = fitted.wired().controller().orElseThrow().outputs().get(LEAD);
            double intoOurs = after.ampsInto(output.part(), output.pin());
            boolean ours = brief.kit()
                    .behaviour()
                    .listOn(situation.controller(), situation.moment())
                    .contains(LEAD);
            if (!ours || situation.moment() == Moment.SETTLED) {
                assertThat(Math.abs(intoOurs)).as("%s", situation).isLessThan(LEAKS_AMPS);
            }
        }
    }

    /** Our diode out and its ends joined: while the lamps are lit they keep our dead controller alive. */
    @Test
    void withoutOurDiodeTheLampsFeedTheDeadController() {
        Brief brief = ExamplesAreReadTest.brief(LAMPS);
        assertThat(verdict(brief, plan())).isInstanceOf(Verdict.Holds.class);
        assertThat(verdict(brief, Bridged.diodes(plan())))
                .isInstanceOfSatisfying(
                        Verdict.Broken.class,
                        broken -> assertThat(broken.least().slack()).isLessThan(-5));
    }

    /** The older kit without its diode, its fuse out: our flash feeds its box by way of the output that it holds closed. */
    @Test
    void withoutTheirDiodeOurFlashFeedsTheirBox() {
        double parted = boxVolts(ExamplesAreReadTest.brief(LAMPS));
        double joined = boxVolts(ReworkedExample.brief(LAMPS, folder, (file, text) -> text.replace(
                "{diode: {id: fitted-diode, conducts: forwards}}", "{wire: {id: fitted-diode, resistance: 1 mohm}}")));
        assertThat(parted).isLessThan(0.5);
        assertThat(joined).isGreaterThan(10);
    }

    private static double boxVolts(Brief brief) {
        Vehicle fitted = Vehicle.fitted(brief, plan(), Corner.TYPICAL);
        Situation flashing = everySituation(brief).stream()
                .filter(s -> brief.kit().behaviour().listOn(s.controller(), s.moment()).contains(LEAD))
                .filter(s -> s.feed() == org.loomproof.workshop.wiring.ControllerFeed.WHOLE)
                .filter(s -> "flashing".equals(s.positions().get(new OperableId("fitted-kit"))))
                .filter(s -> "off".equals(s.positions().get(new OperableId("light-switch"))))
                .findFirst()
                .orElseThrow();
        PartId fuse = fitted.wired().factory().fuses().get(new ElementId("fitted-fuse")).part();
        Reach box = element(fitted, "fitted-box");
        OperatingPoint point = solved(fitted, fitted.settings().of(flashing).broken(fuse));
        return Math.abs(point.volts(box.from(), box.to()));
    }

    private static Verdict verdict(Brief brief, Plan plan) {
        return Prover.prove(brief, plan).results().stream()
                .filter(result -> result.id().equals("stays-dead P1-2"))
                .findFirst()
                .orElseThrow()
                .verdict();
    }
}
