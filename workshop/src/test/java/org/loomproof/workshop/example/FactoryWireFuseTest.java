package org.loomproof.workshop.example;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.Figure;
import org.loomproof.workshop.brief.sheet.PathStep;
import org.loomproof.workshop.fixture.Altered;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.Measurement;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.Prover;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.quantity.Amps;
import org.loomproof.workshop.words.Messages;
import org.loomproof.workshop.words.Phrase;

/**
 * A factory wire that something added feeds is protected as well as it was: the added fuse is no larger than the factory's own,
 * which stands on the sheet. The planner keeps to it, and the prover holds every plan to it, one edited by hand as well. Common
 * practice, no published source.
 */
class FactoryWireFuseTest {

    private static final String BY_RELAYS = "circuits/parking-lamps-left-and-right-by-relays";

    @ParameterizedTest
    @CsvSource({BY_RELAYS + ", 10", "circuits/parking-lamps-too-much-for-the-output, 15"})
    void theFuseBeforeAFactoryWireIsNoLargerThanTheFactorysOwn(String example, double factoryAmps) {
        Plan plan = PlannedExamples.job(folder(example)).plan();
        assertThat(plan.parts())
                .filteredOn(AddedPart.Fuse.class::isInstance)
                .extracting(part -> ((AddedPart.Fuse) part).rating().value())
                .allMatch(amps -> amps <= factoryAmps)
                .contains(factoryAmps);
    }

    /** Left and right have a fuse each on the sheet, so the relay of each has one too, and one short leaves the other side lit. */
    @Test
    void sidesWithFactoryFusesOfTheirOwnGetAnAddedFuseEach() {
        assertThat(fuses(PlannedExamples.job(folder(BY_RELAYS)).plan())).containsExactly(10.0, 10.0);
    }

    /** A fuse for each side is there already: what is left to do is to take a load off. */
    @Test
    void aFuseThatFeedsOneCircuitIsNotToldToBecomeSeveral() {
        Plan plan = PlannedExamples.job(folder(BY_RELAYS)).plan();
        assertThat(plan.cautions())
                .extracting(Phrase::key)
                .contains("caution.fuse-too-small-for-one")
                .doesNotContain("caution.fuse-too-small");
    }

    @Test
    void asPlannedEachSideHolds() {
        Plan plan = PlannedExamples.job(folder(BY_RELAYS)).plan();
        assertThat(slack(verdict(brief(BY_RELAYS), plan, "left"))).isZero();
        assertThat(slack(verdict(brief(BY_RELAYS), plan, "right"))).isZero();
    }

    /** Edited by hand: 15 A before the left lamps, whose factory fuse F7 is one of 10 A. */
    @Test
    void aLargerFuseWrittenInByHandIsBrokenAndSaysWhen() {
        Plan plan = PlannedExamples.job(folder(BY_RELAYS)).plan();
        Plan edited = Altered.part(plan, new AddedPart.Fuse(firstLampFuse(plan), new Amps(15)));
        Verdict.Broken broken = (Verdict.Broken) verdict(brief(BY_RELAYS), edited, "left");
        assertThat(broken.worst().slack()).isEqualTo(-5);
        assertThat(broken.witness().steps())
                .extracting(Messages.english()::text)
                .last()
                .isEqualTo("do not do it: think of the wire of left as chafed through to the body");
        assertThat(verdict(brief(BY_RELAYS), edited, "right")).isInstanceOf(Verdict.Holds.class);
    }

    /** A sheet that knows the factory fuse only as 7.5 to 10 A leaves an added fuse of 10 A open, and asks to read it. */
    @Test
    void aFactoryFuseThatIsNotReadLeavesItOpen() {
        Brief unread = Altered.steps(
                brief(BY_RELAYS),
                step -> step instanceof PathStep.Fuse fuse
                                && fuse.id().toString().equals("F7")
                        ? new PathStep.Fuse(
                                fuse.id(),
                                new Figure<>(
                                        new Amps(7.5),
                                        fuse.rating().typical(),
                                        fuse.rating().high(),
                                        fuse.rating().basis()),
                                fuse.coldResistance())
                        : step);
        Plan plan = PlannedExamples.job(folder(BY_RELAYS)).plan();
        Verdict.Open open = (Verdict.Open) verdict(unread, plan, "left");
        assertThat(open.settledBy()).extracting(Measurement::name).containsExactly("protection-of left");
    }

    /** A wire that comes from the car's own switch and goes on behind a cut is fed by nothing that was added. */
    @Test
    void whatTheFactoryFeedsItselfIsNotAskedAbout() {
        String example = "circuits/starter-cut-by-a-transistor";
        assertThat(Prover.prove(
                                brief(example),
                                PlannedExamples.job(folder(example)).plan())
                        .results())
                .extracting(ClaimResult::id)
                .noneMatch(id -> id.startsWith("factory-wire-fused"));
    }

    private static AddedPartId firstLampFuse(Plan plan) {
        return plan.parts().stream()
                .filter(part ->
                        part instanceof AddedPart.Fuse fuse && fuse.rating().value() == 10)
                .findFirst()
                .orElseThrow()
                .id();
    }

    private static List<Double> fuses(Plan plan) {
        return plan.parts().stream()
                .filter(part ->
                        part instanceof AddedPart.Fuse fuse && fuse.rating().value() == 10)
                .map(part -> ((AddedPart.Fuse) part).rating().value())
                .toList();
    }

    private static double slack(Verdict verdict) {
        return ((Verdict.Holds) verdict).tightest().slack();
    }

    private static Verdict verdict(Brief brief, Plan plan, String circuit) {
        return Prover.prove(brief, plan).results().stream()
                .filter(result -> result.id().equals("factory-wire-fused " + circuit))
                .findFirst()
                .orElseThrow()
                .verdict();
    }

    private static Brief brief(String example) {
        return ExamplesAreReadTest.brief(folder(example));
    }

    private static Path folder(String example) {
        return ExampleFiles.root().resolve(example);
    }
}
