package org.loomproof.workshop.plan.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomproof.workshop.brief.kit.Choice;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.read.GivenTexts;
import org.loomproof.workshop.brief.read.ReadBrief;
import org.loomproof.workshop.brief.text.SourceText;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.problem.Problem;
import org.loomproof.workshop.quantity.Metres;
import org.loomproof.workshop.quantity.SquareMillimetres;
import org.loomproof.workshop.quantity.WireGauge;

class PlanFileTest {

    private final PlanFile byHand = PlanTexts.byHand().good();

    @Test
    void aPlanWrittenByHandReadsAsItIsWritten() {
        Plan plan = byHand.plan();
        assertThat(plan.hookups()).hasSize(6);
        assertThat(plan.findHookup(new LeadId("P1-3"))).get().isInstanceOf(Hookup.Hold.class);
        assertThat(plan.findPart(new AddedPartId("K1")).orElseThrow().terminals())
                .contains("87a");
        assertThat(plan.wires().get(4).to()).isInstanceOf(End.CutAfter.class);
        assertThat(plan.wires().get(1).size()).isEqualTo(WireGauge.area(18));
        assertThat(plan.wires().get(10).from()).isEqualTo(new End.OfPart(new AddedPartId("S1"), "-"));
        assertThat(plan.wires().getFirst().size()).isEqualTo(new SquareMillimetres(1));
        assertThat(plan.settings()).containsExactly(new Choice("door input polarity", "supply when open"));
    }

    @Test
    void whatIsWrittenReadsBackAsTheSamePlanAndWritesTheSameBytes() {
        PlanFileWriter writer = new PlanFileWriter(PlanTexts.ENGLISH);
        String once = writer.write(byHand);
        PlanFile again = new PlanTexts(once).good();
        assertThat(again.plan()).isEqualTo(byHand.plan());
        assertThat(again.given().sheet().text()).isEqualTo(GivenTexts.valid().sheet());
        assertThat(writer.write(again)).isEqualTo(once);
    }

    @Test
    void whatWasDecidedIsReadForTheTextsItWasDecidedFor() {
        PlanFileWriter writer = new PlanFileWriter(PlanTexts.ENGLISH);
        String decided = writer.writeDecided(byHand);
        assertThat(decided).doesNotContain("inputs:").doesNotContain("sha256");
        assertThat(decided(decided).plan()).isEqualTo(byHand.plan());
    }

    @Test
    void otherFiguresAreWrittenAsTheyWereTypedAndJudgedWhenRead() {
        PlanFileWriter writer = new PlanFileWriter(PlanTexts.ENGLISH);
        String wire = byHand.plan().wires().getFirst().id().value();
        assertThat(decided(writer.writeDecided(byHand, Map.of(wire, Map.of("length", "2.4 m", "colour", "red"))))
                        .plan()
                        .wires()
                        .getFirst())
                .isEqualTo(new AddedWire(
                        byHand.plan().wires().getFirst().id(),
                        byHand.plan().wires().getFirst().from(),
                        byHand.plan().wires().getFirst().to(),
                        new Metres(2.4),
                        byHand.plan().wires().getFirst().size()));
        String wrong =
                writer.writeDecided(byHand, Map.of(wire, Map.of("length", "rather long"), "K1", Map.of("coil", "")));
        assertThat(((Checked.Bad<PlanFile>)
                                PlanTexts.reader().readDecided(new SourceText("plan.yaml", wrong), byHand.given()))
                        .problems())
                .extracting(Problem::found)
                .contains("rather long");
    }

    private PlanFile decided(String text) {
        return switch (PlanTexts.reader().readDecided(new SourceText("plan.yaml", text), byHand.given())) {
            case Checked.Good<PlanFile>(PlanFile file) -> file;
            case Checked.Bad<PlanFile>(var problems) -> throw new AssertionError(problems.toString());
        };
    }

    @Test
    void aBlankHoldsEveryLeadAndCanBeReadBack() {
        PlanFile blank =
                new PlanFile(byHand.given(), BlankPlan.of(byHand.given().brief().kit()));
        String text = new PlanFileWriter(PlanTexts.ENGLISH).writeBlank(blank);
        assertThat(text.lines().filter(line -> line.startsWith("#"))).anyMatch(line -> line.contains("cap-and-keep"));
        Plan plan = new PlanTexts(text).good().plan();
        assertThat(plan.hookups()).hasSize(6).allMatch(Hookup.Hold.class::isInstance);
    }

    @Test
    void theFolderOfAnInputIsNotWritten() {
        ReadBrief given = byHand.given();
        SourceText fromFolder =
                new SourceText("jobs/van 12/sheet.yaml", given.sheet().text());
        PlanFile file =
                new PlanFile(new ReadBrief(given.brief(), fromFolder, given.kit(), given.order()), byHand.plan());
        assertThat(new PlanFileWriter(PlanTexts.ENGLISH).write(file))
                .contains("name: sheet.yaml")
                .doesNotContain("van 12/");
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "do: hold | do: wait | plan.yaml:13:9 hookups[2].do: this word is not accepted here; found \"wait\"; wanted one of: connect, trim, cap-and-keep, hold",
                "from: lead P1-2 | from: lead P1-9 | plan.yaml:36:20 wires[W3].from: nothing has this name; found \"P1-9\"; wanted one of: P1-1, P1-2, P1-3, P1-4, P1-5, P2-1; did you mean P1-1?",
                "to: K1 30 | to: K1 88 | plan.yaml:37:48 wires[W4].to: this word is not accepted here; found \"88\"; wanted one of: 86, 85, 30, 87, 87a; did you mean 86?",
                "to: K1 30 | to: K2 30 | plan.yaml:37:48 wires[W4].to: nothing has this name; found \"K2\"; wanted one of: F1, K1, D1, S1; did you mean K1?",
                "circuit starter before | circuit battery-feed before | plan.yaml:37:20 wires[W4].from: two statements contradict each other; found \"circuit battery-feed before\"; wanted a tap: the sheet says battery-feed may be tapped and not cut",
                "circuit starter before | circuit starter at | plan.yaml:37:20 wires[W4].from: this word is not accepted here; found \"at\"; wanted one of: tap, before, after",
                "to: body, length: 0.3 | to: lead P1-2, length: 0.3 | plan.yaml:36:35 wires[W3].to: two statements contradict each other; found \"lead P1-2\"; wanted two different ends",
                "to: body, length: 0.3 | to: lead P1-3, length: 0.3 | plan.yaml:36:35 wires[W3].to: two statements contradict each other; found \"lead P1-3\"; wanted a wire only at a connected lead; P1-3 is not connected",
                "extra: siren | extra: hooter | plan.yaml:32:33 parts[S1].extra: nothing has this name; found \"hooter\"; wanted one of: indicator, siren",
                "wish: remote-start | wish: siren | plan.yaml:46:12 refusals[0].wish: two statements contradict each other; found \"siren\"; wanted either a refusal of siren or leads that serve it",
                "from: lead P1-2, to: body | from: K1 87, to: body | plan.yaml:11:54 hookups[1].wires: something is missing; wanted a wire that ends at lead P1-2, since it is connected",
                "drop-out: 1.2 V | drop-out: 9 V | plan.yaml:30:65 parts[K1].drop-out: two statements contradict each other; found \"9 V\"; wanted drop-out at or under pull-in",
                "option: door input polarity | option: lock pulse | plan.yaml:50:14 settings[0].option: nothing has this name; found \"lock pulse\"; wanted one of: door input polarity",
                "set-to: supply when open | set-to: suply when open | plan.yaml:50:43 settings[0].set-to: nothing has this name; found \"suply when open\"; wanted one of: ground when open, supply when open; did you mean supply when open?",
                "18 AWG | 50 AWG | plan.yaml:35:62 wires[W2].size: the value is out of range; found \"50 AWG\"; wanted a value from 0.01 mm² to 500 mm²",
            })
    void oneFaultIsToldWithItsPlaceAndWhatWouldDo(String before, String after, String told) {
        assertThat(PlanTexts.byHand().with(before, after).problems()).containsExactly(told);
    }

    @Test
    void aLeadDecidedTwiceLeavesAnotherUndecidedAndBothAreTold() {
        assertThat(PlanTexts.byHand().with("lead: P1-2, do", "lead: P1-1, do").problems())
                .containsExactly(
                        "plan.yaml:3:3 hookups: something is missing; wanted a decision for lead P1-2",
                        "plan.yaml:11:12 hookups[1].lead: the name is given twice; found \"P1-1\"; "
                                + "wanted another name; the other one is on line 3");
    }

    @Test
    void aChangedInputIsNoticedByItsSumAndItsOwnProblemsAreToldToo() {
        PlanTexts changed = PlanTexts.byHand().with("sleep-current: 18 mA", "sleep-current: 18");
        assertThat(changed.problems()).hasSize(2);
        assertThat(changed.problems().getFirst())
                .startsWith("plan.yaml:54:13 inputs.sheet.sha256: the text is not the one the plan was made from");
        assertThat(changed.problems().getLast()).startsWith("sheet.yaml:13:18 vehicle.sleep-current: the unit");
    }

    @Test
    void aSumOfAKnownTextIsTheOneOfThePublishedExample() {
        // FIPS 180-4 test vector: the text abc.
        assertThat(TextSum.of("abc")).isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }
}
