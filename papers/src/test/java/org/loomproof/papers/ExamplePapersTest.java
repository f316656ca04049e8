package org.loomproof.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.papers.drawing.Inspection;
import org.loomproof.papers.drawing.PlacedDrawing;
import org.loomproof.papers.folder.FolderOutcome;
import org.loomproof.papers.folder.Paper;
import org.loomproof.papers.folder.PaperFolder;
import org.loomproof.papers.page.Wording;
import org.loomproof.papers.schematic.Details;
import org.loomproof.papers.schematic.Schematic;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.goods.joint.Joints;
import org.loomproof.workshop.goods.joint.PlacedJoint;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.weigh.PlannedJob;
import org.loomproof.workshop.weigh.Weigher;
import org.loomproof.workshop.words.Messages;

/** The papers of worked examples are made and inspected; they are left in {@code target/example-papers}. */
class ExamplePapersTest {

    /** The demo's example and one more, drawn from a printed seed; all of them where long tests run in full. */
    static List<Path> examples() {
        List<Path> all = Examples.all();
        if (Boolean.getBoolean("loomproof.long")) {
            return all;
        }
        long seed = Long.getLong("loomproof.seed", 1);
        System.out.println("inspect: examples drawn with -Dloomproof.seed=" + seed);
        Path demo = Examples.FOLDER.resolve("bakery-van");
        List<Path> others = all.stream().filter(e -> !e.equals(demo)).toList();
        return List.of(demo, others.get(new Random(seed).nextInt(others.size())));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void thePapersOfEachExampleAreSound(Path example) {
        Brief brief = Examples.brief(example);
        PlannedJob job = new Weigher().weigh(brief);
        List<Paper> papers = Papers.of(
                new Material(brief, job.plan(), job.proof(), Optional.empty(), ""),
                ShopFacts.NONE,
                Optional.empty(),
                Messages.english());
        Path folder = Path.of(
                "target", "example-papers", Examples.FOLDER.relativize(example).toString());
        assertThat(PaperFolder.write(folder, papers)).isInstanceOf(FolderOutcome.Written.class);

        papers.stream()
                .filter(paper -> paper.name().endsWith(".html") || paper.name().endsWith(".svg"))
                .forEach(paper -> Reading.of(paper.text()));
        assertThat(Reading.of(papers.get(1).text()).elements("tr", "lead"))
                .hasSameSizeAs(brief.kit().leads());
        Wording words = new Wording(Messages.english());
        inspect(example, job.plan(), Schematic.sheets(brief, job.plan(), words));
        inspect(brief, job.plan(), Details.sheets(brief, job.plan(), words));
    }

    /** Every joint that is numbered stands by its number on a detail, and nothing lies on anything. */
    private static void inspect(Brief brief, Plan plan, List<PlacedDrawing> details) {
        List<String> texts = new ArrayList<>();
        for (PlacedDrawing sheet : details) {
            Inspection found = Inspection.of(sheet);
            assertThat(found.overlaps()).isEmpty();
            assertThat(found.struck()).isEmpty();
            assertThat(found.outside()).isEmpty();
            sheet.listLettering().forEach(l -> texts.add(l.text()));
        }
        for (PlacedJoint joint : new Joints(brief, plan).list()) {
            if (!(joint.place() instanceof End.OfPart)) {
                assertThat(texts).anyMatch(text -> text.startsWith(joint.name() + " "));
            }
        }
    }

    private static void inspect(Path example, Plan plan, List<PlacedDrawing> sheets) {
        List<String> words = new ArrayList<>();
        int crossings = 0;
        for (PlacedDrawing sheet : sheets) {
            Inspection found = Inspection.of(sheet);
            assertThat(found.overlaps()).isEmpty();
            assertThat(found.struck()).isEmpty();
            assertThat(found.outside()).isEmpty();
            crossings += found.crossings();
            sheet.listLettering().forEach(l -> words.addAll(List.of(l.text().split("[ ,]+"))));
        }
        for (AddedWire wire : plan.wires()) {
            assertThat(words).contains(wire.id().value());
        }
        for (AddedPart part : plan.parts()) {
            assertThat(words).contains(part.id().value());
        }
        System.out.printf(
                "inspect: %s: %d sheets, %d crossings, %d wires%n",
                example.getFileName(), sheets.size(), crossings, plan.wires().size());
        assertThat(crossings).isLessThanOrEqualTo(plan.wires().size());
    }
}
