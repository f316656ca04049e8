package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.planner.Planner;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.prover.testorder.HandTest;
import org.loomproof.workshop.prover.testorder.HandTests;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.words.Messages;

/** A car with an alarm of its own that is unlocked by remote. Common practice, no published source. */
class FactoryAlarmTest {

    private static final Path ALARM = ExampleFiles.root().resolve("circuits/locks-with-a-factory-alarm");

    @TempDir
    private Path folder;

    private Plan planned(String sheetFrom, String sheetTo, String kitTo) {
        Brief brief = ReworkedExample.brief(
                ALARM,
                folder,
                (file, text) ->
                        file.equals("kit.yaml") ? text.replace("behaviour:", kitTo) : text.replace(sheetFrom, sheetTo));
        return Planner.plan(brief).plans().getFirst();
    }

    private static List<String> cautions(Plan plan) {
        return plan.cautions().stream().map(Messages.english()::text).toList();
    }

    @Test
    void itIsDisarmedByTheLeadThatUnlocks() {
        Plan plan = planned("active: ground", "active: ground", "behaviour:");

        assertThat(plan.hookups())
                .filteredOn(hookup -> hookup instanceof Hookup.Connect connect
                        && connect.circuits().toString().contains("alarm"))
                .extracting(hookup -> ((Hookup.Connect) hookup).circuits().toString())
                .containsExactlyInAnyOrder("[lock-wire, alarm-on]", "[unlock-wire, alarm-off]");
        assertThat(cautions(plan)).noneMatch(caution -> caution.contains("is not worked by these locks"));
    }

    @Test
    void whereActuatorsWorkTheLocksItIsSaidThatTheAlarmIsLeftOut() {
        Plan plan = planned(
                "active: ground\n    follows: [lock-switch]",
                "active: data\n    follows: [lock-switch]",
                "extras:\n  - {name: driver door actuator, kind: actuator, draws: 4.5 A}\n\nbehaviour:");

        assertThat(plan.refusals()).isEmpty();
        assertThat(cautions(plan)).anyMatch(caution -> caution.contains("is not worked by these locks"));
    }

    /** With the wires of a diode on one terminal it parts nothing: the lock switch works the alarm, or the key the locks. */
    @ParameterizedTest
    @CsvSource({
        "D4, stock-as-before module-arms",
        "D6, stock-as-before locking-coil",
        "D1, stock-as-before module-disarms",
        "D3, stock-as-before unlocking-coil"
    })
    void aDiodeThatIsPassedByLetsOneWireWorkTheOther(String diode, String claim) {
        Brief brief = ExamplesAreReadTest.brief(ALARM);
        Plan plan = PlannedExamples.job(ALARM).plan();
        assertThat(broken(brief, plan)).isEmpty();
        assertThat(broken(brief, plan.withWires(passingBy(plan, new AddedPartId(diode)))))
                .contains(claim);
    }

    private static List<AddedWire> passingBy(Plan plan, AddedPartId diode) {
        UnaryOperator<End> landed = end -> end.equals(new End.OfPart(diode, "A")) ? new End.OfPart(diode, "K") : end;
        return plan.wires().stream()
                .map(wire -> new AddedWire(
                        wire.id(), landed.apply(wire.from()), landed.apply(wire.to()), wire.length(), wire.size()))
                .toList();
    }

    private static List<String> broken(Brief brief, Plan plan) {
        return Prover.prove(brief, plan).results().stream()
                .filter(result -> result.verdict() instanceof Verdict.Broken)
                .map(ClaimResult::id)
                .toList();
    }

    @Test
    void atHandOverADoorIsOpenedToHearThatItIsDisarmed() {
        Brief brief = ExamplesAreReadTest.brief(ALARM);
        assertThat(HandTests.list(brief, PlannedExamples.job(ALARM).plan(), true))
                .filteredOn(test -> test.id().equals("disarm"))
                .flatExtracting(HandTest::steps)
                .extracting(Messages.english()::text)
                .contains(
                        "open the driver's door: the car's own alarm (armed and disarmed by the key in the driver's door)"
                                + " stays silent");
    }
}
