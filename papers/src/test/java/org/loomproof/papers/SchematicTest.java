package org.loomproof.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomproof.papers.drawing.Ink;
import org.loomproof.papers.drawing.Inspection;
import org.loomproof.papers.drawing.PlacedDrawing;
import org.loomproof.papers.schematic.Schematic;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.goods.joint.Joints;
import org.loomproof.workshop.goods.joint.PlacedJoint;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.weigh.Weigher;

class SchematicTest {

    private static final List<PlacedDrawing> SHEETS =
            Schematic.sheets(SampleJob.brief(), SampleJob.plan(), SampleJob.words());

    private static List<String> texts() {
        List<String> texts = new ArrayList<>();
        SHEETS.forEach(s -> s.listLettering().forEach(l -> texts.add(l.text())));
        return texts;
    }

    @Test
    void noTextLiesOnAnotherOrUnderALineOrOffTheSheet() {
        for (PlacedDrawing sheet : SHEETS) {
            Inspection found = Inspection.of(sheet);
            System.out.println("inspect: " + found);
            assertThat(found.overlaps()).isEmpty();
            assertThat(found.struck()).isEmpty();
            assertThat(found.outside()).isEmpty();
        }
    }

    @Test
    void conductorsCrossLessOftenThanThereAreNets() {
        int crossings = SHEETS.stream().mapToInt(Inspection::countCrossings).sum();
        System.out.println("inspect: " + crossings + " crossings of conductors on " + SHEETS.size() + " sheets");
        assertThat(crossings).isLessThanOrEqualTo(SampleJob.plan().wires().size());
    }

    @Test
    void everyAddedPartStandsOnExactlyOneSheetByItsName() {
        for (AddedPart part : SampleJob.plan().parts()) {
            assertThat(texts()).containsOnlyOnce(part.id().value());
        }
    }

    @Test
    void everyAddedWireIsLettered() {
        List<String> words = new ArrayList<>();
        texts().forEach(t -> words.addAll(List.of(t.split("[ ,]+"))));
        for (AddedWire wire : SampleJob.plan().wires()) {
            assertThat(words).contains(wire.id().value());
        }
    }

    @Test
    void everyConnectedLeadShowsTheLettersOfItsColour() {
        for (Hookup hookup : SampleJob.plan().hookups()) {
            if (hookup instanceof Hookup.Connect connect) {
                String letters = SampleJob.brief()
                        .kit()
                        .lead(connect.lead())
                        .colour()
                        .orElseThrow()
                        .letters();
                assertThat(texts()).anyMatch(t -> t.contains(letters));
            }
        }
    }

    @Test
    void bothSidesOfTheCutStarterWireSayWhichSideTheyAre() {
        assertThat(texts())
                .anyMatch(t -> t.matches("J\\d+ W11 .*") && t.endsWith("side of ignition-switch-50"))
                .anyMatch(t -> t.matches("J\\d+ W12 .*") && t.endsWith("side of starter-solenoid"));
    }

    /** Where wires meet a factory wire or the body there is a joint with a number; no two have the same. */
    @Test
    void everyJointInTheCarIsNumberedOnce() {
        List<String> numbers = new Joints(SampleJob.brief(), SampleJob.plan())
                .list().stream()
                        .filter(joint ->
                                !(joint.place() instanceof End.OfPart) && !(joint.place() instanceof End.OfLead))
                        .map(PlacedJoint::name)
                        .toList();
        assertThat(numbers).isNotEmpty().doesNotHaveDuplicates();
        assertThat(numbers).allSatisfy(number -> assertThat(texts()).anyMatch(t -> t.startsWith(number + " ")));
    }

    @Test
    void relayTerminalsCarryTheirDinNumbers() {
        assertThat(texts()).contains("30", "85", "86", "87", "87a");
    }

    @Test
    void aConductorIsDrawnInItsLeadsColours() {
        boolean isPinkWithBlack = SHEETS.stream()
                .flatMap(s -> s.routes().stream())
                .anyMatch(r -> r.conductor().id().equals("W10")
                        && r.conductor().pen().colour().equals("#f291b2")
                        && r.conductor().pen().tracer().orElse("").equals("#1c1c1c"));
        assertThat(isPinkWithBlack).isTrue();
    }

    @Test
    void conductorsRunOnlyAcrossAndDown() {
        for (PlacedDrawing sheet : SHEETS) {
            for (PlacedDrawing.Route route : sheet.routes()) {
                for (int i = 1; i < route.corners().size(); i++) {
                    double dx = Math.abs(route.corners().get(i).x()
                            - route.corners().get(i - 1).x());
                    double dy = Math.abs(route.corners().get(i).y()
                            - route.corners().get(i - 1).y());
                    assertThat(Math.min(dx, dy)).isLessThan(1e-6);
                }
            }
        }
    }

    @Test
    void letteringIsSevenPointsOrMoreAsPrinted() {
        assertThat(SHEETS).allSatisfy(sheet -> assertThat(printedPoints(sheet)).isGreaterThanOrEqualTo(7.0 - 1e-9));
    }

    /** The smallest type of a sheet in points, at the width of print that {@link PdfTest} measures: 268 mm. */
    static double printedPoints(PlacedDrawing sheet) {
        double printed = 268 / 25.4 * 72 / sheet.width();
        return printed
                * sheet.listLettering().stream()
                        .mapToDouble(Ink.Lettering::size)
                        .min()
                        .orElseThrow();
    }

    @Test
    void theSameJobIsDrawnTheSameEachTime() {
        assertThat(Schematic.sheets(SampleJob.brief(), SampleJob.plan(), SampleJob.words()))
                .isEqualTo(SHEETS);
    }

    /** Three relays on two fuses and their circuits are too much for a sheet. */
    @Test
    void whatIsTooMuchForASheetIsDrawnByFunctionAndSaysWhereItGoesOn() {
        Brief brief = Examples.brief(Examples.FOLDER.resolve("circuits").resolve("locks-drivers-door-first"));
        Plan plan = new Weigher().weigh(brief).plan();
        List<PlacedDrawing> sheets = Schematic.sheets(brief, plan, SampleJob.words());
        assertThat(GoingOn.assertBothSidesSayWhere(plan, sheets, SampleJob.words()))
                .isPositive();
        assertThat(sheets).allSatisfy(sheet -> {
            assertThat(printedPoints(sheet)).isGreaterThanOrEqualTo(7.0 - 1e-9);
            assertThat(Inspection.crossingsByNet(sheet)).allMatch(crossings -> crossings <= 1);
        });
    }
}
