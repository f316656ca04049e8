package org.loomproof.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomproof.papers.bay.ShopAddress;
import org.loomproof.papers.drawing.Ink;
import org.loomproof.papers.drawing.Inspection;
import org.loomproof.papers.drawing.PlacedDrawing;
import org.loomproof.papers.folder.FolderOutcome;
import org.loomproof.papers.folder.Paper;
import org.loomproof.papers.folder.PaperFolder;
import org.loomproof.papers.page.Wording;
import org.loomproof.papers.pdf.Sheet;
import org.loomproof.papers.schematic.Details;
import org.loomproof.papers.schematic.Schematic;
import org.loomproof.testing.Sample;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.order.Order;
import org.loomproof.workshop.brief.sheet.Circuit;
import org.loomproof.workshop.goods.joint.Joints;
import org.loomproof.workshop.goods.joint.PlacedJoint;
import org.loomproof.workshop.goods.price.History;
import org.loomproof.workshop.goods.price.PriceList;
import org.loomproof.workshop.goods.price.PriceListReader;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.prover.FaultProver;
import org.loomproof.workshop.prover.FaultWatch;
import org.loomproof.workshop.weigh.PlannedJob;
import org.loomproof.workshop.weigh.Weigher;
import org.loomproof.workshop.words.Messages;

/**
 * Every paper of worked examples is made and inspected, and left in {@code target/example-papers}: the demo's example and one
 * more, another one each turn, printed on A4; where long tests run in full all of them, on both sheets, each PDF also by
 * veraPDF. The test order is that of the first faults, which has every kind of row.
 */
class ExamplePapersTest {

    private static final boolean IN_FULL = Sample.full();

    /** A word that stands in no example: where the button of the override is said to be. */
    private static final String HIDDEN = "cubbyhole";

    /** Papers that may name the place of the button: the owner's slip, and the shop's own where it is fitted and kept. */
    private static final List<String> MAY_NAME_IT =
            List.of(Papers.PLAN, "bay-sheet", "warranty-record", "override-slip");

    private static final List<String> FOR_THE_CUSTOMER = List.of("hand-over", "quote");

    private static final int FIRST_FAULTS = 20;

    /** What the drawing aims at, and keeps on every sheet of every example. */
    private static final int MOST_CROSSINGS_OF_A_NET = 1;

    private static final PriceList PRICES =
            switch (PriceListReader.read(Examples.FOLDER.resolve("bakery-van").resolve("prices.csv"))) {
                case Checked.Good<PriceList>(PriceList list) -> list;
                case Checked.Bad<PriceList>(var problems) -> throw new AssertionError(problems.toString());
            };

    static List<Path> examples() {
        Path demo = Examples.FOLDER.resolve("bakery-van");
        List<Path> others = Examples.all().stream().filter(e -> !e.equals(demo)).toList();
        return Stream.concat(Stream.of(demo), Sample.of(others, 1).stream()).toList();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void thePapersOfEachExampleAreSound(Path example) {
        Brief brief = withHiddenPlace(Examples.brief(example));
        PlannedJob job = new Weigher().weigh(brief);
        Material material = new Material(
                brief, job.plan(), job.proof(), Optional.of(FaultProver.prove(brief, job.plan(), watch())), "");
        Map<Sheet, List<Paper>> printed = new LinkedHashMap<>();
        for (Sheet sheet : IN_FULL ? List.of(Sheet.values()) : List.of(Sheet.A4)) {
            printed.put(sheet, papers(material, sheet));
        }
        List<Paper> papers = Objects.requireNonNull(printed.get(Sheet.A4));
        Path folder = Path.of(
                "target", "example-papers", Examples.FOLDER.relativize(example).toString());
        assertThat(PaperFolder.write(folder, papers)).isInstanceOf(FolderOutcome.Written.class);

        papers.stream()
                .filter(paper -> paper.name().endsWith(".html") || paper.name().endsWith(".svg"))
                .forEach(paper -> Reading.of(paper.text()));
        assertThat(Reading.of(papers.get(1).text()).elements("tr", "lead"))
                .hasSameSizeAs(brief.kit().leads());
        Wording words = new Wording(Messages.english());
        List<PlacedDrawing> sheets = Schematic.sheets(brief, job.plan(), words);
        inspect(example, brief, job.plan(), sheets);
        GoingOn.assertBothSidesSayWhere(job.plan(), sheets, words);
        inspectDetails(brief, job.plan(), Details.sheets(brief, job.plan(), words));
        printed.forEach((sheet, all) -> inspectPrints(example, brief, sheet, all));
        papers.stream().filter(paper -> !isPdf(paper)).forEach(paper -> hidesPlaces(brief, paper.name(), paper.text()));
    }

    private static FaultWatch watch() {
        return new FaultWatch() {
            private boolean isEnough;

            @Override
            public void lookedAt(int done, int all) {
                isEnough = done >= FIRST_FAULTS;
            }

            @Override
            public boolean isEnough() {
                return isEnough;
            }
        };
    }

    private static Brief withHiddenPlace(Brief brief) {
        Order o = brief.order();
        Order hidden = new Order(
                o.job(),
                o.wishes(),
                o.watched(),
                Optional.of(HIDDEN),
                o.ruleSet(),
                o.longestUnusedDays(),
                o.shop(),
                o.stock(),
                o.changes());
        return new Brief(brief.sheet(), brief.kit(), hidden);
    }

    private static List<Paper> papers(Material job, Sheet sheet) {
        ShopFacts shop = new ShopFacts(
                Optional.of(PRICES),
                History.NONE,
                Optional.empty(),
                ShopAddress.in("https://bench.example:8443"),
                List.of(),
                Locale.ENGLISH);
        return Papers.of(job, shop, Optional.of(sheet), Messages.english());
    }

    /** No letter lies on another, is smaller than it may be or leaves its page, and the file keeps the rules for readers. */
    private static void inspectPrints(Path example, Brief brief, Sheet sheet, List<Paper> papers) {
        int pages = 0;
        int letters = 0;
        for (Paper paper : papers) {
            if (isPdf(paper)) {
                String at = example.getFileName() + " " + paper.name() + " on " + sheet.word();
                PrintInspection found = PrintInspection.of(paper.bytes());
                assertThat(found.tooSmall()).as(at).isEmpty();
                assertThat(found.outside()).as(at).isEmpty();
                assertThat(found.overlaps()).as(at).isEmpty();
                assertThat(found.orphans()).as(at).isEmpty();
                hidesPlaces(brief, paper.name(), found.text());
                if (IN_FULL) {
                    assertThat(PdfUa.of(paper.bytes()).broken()).as(at).isEmpty();
                }
                pages += found.pages();
                letters += found.letters();
            }
        }
        assertThat(pages).isGreaterThanOrEqualTo(10);
        System.out.printf(
                "inspect: %s: %d pages on %s, %d letters%n", example.getFileName(), pages, sheet.word(), letters);
    }

    /** The place of the button stands where it must and nowhere else; the customer reads of no place in the car at all. */
    private static void hidesPlaces(Brief brief, String name, String printed) {
        String text = printed.replaceAll("\\s+", " ");
        if (MAY_NAME_IT.stream().noneMatch(name::startsWith)) {
            assertThat(text).as(name).doesNotContain(HIDDEN);
        }
        if (FOR_THE_CUSTOMER.stream().anyMatch(name::startsWith)) {
            // What the shop calls the job is its own business, even where it names a door.
            String apart = text.replace(brief.order().job(), "");
            for (Circuit circuit : brief.sheet().circuits()) {
                String panel = circuit.where().panel();
                if (!panel.isBlank()) {
                    assertThat(apart).as(name).doesNotContain(panel);
                }
            }
        }
    }

    private static boolean isPdf(Paper paper) {
        return paper.name().endsWith(".pdf");
    }

    private static void assertNothingIsInTheWay(PlacedDrawing sheet) {
        Inspection found = Inspection.of(sheet);
        assertThat(found.overlaps()).isEmpty();
        assertThat(sheet.listLettering())
                .extracting(Ink.Lettering::text)
                .as("cut at their ends")
                .noneMatch(text -> text.endsWith("…"));
        assertThat(found.struck()).isEmpty();
        assertThat(found.outside()).isEmpty();
        assertThat(SchematicTest.printedPoints(sheet)).isGreaterThanOrEqualTo(7.0 - 1e-9);
    }

    /** Every joint that is numbered stands by its number on a detail, and nothing lies on anything. */
    private static void inspectDetails(Brief brief, Plan plan, List<PlacedDrawing> details) {
        List<String> texts = new ArrayList<>();
        for (PlacedDrawing sheet : details) {
            assertNothingIsInTheWay(sheet);
            sheet.listLettering().forEach(l -> texts.add(l.text()));
        }
        for (PlacedJoint joint : new Joints(brief, plan).list()) {
            if (!(joint.place() instanceof End.OfPart)) {
                assertThat(texts).anyMatch(text -> text.startsWith(joint.name() + " "));
            }
        }
    }

    private static void inspect(Path example, Brief brief, Plan plan, List<PlacedDrawing> sheets) {
        List<String> texts = new ArrayList<>();
        List<String> words = new ArrayList<>();
        List<Integer> byNet = new ArrayList<>();
        int crossings = 0;
        for (PlacedDrawing sheet : sheets) {
            assertNothingIsInTheWay(sheet);
            crossings += Inspection.countCrossings(sheet);
            byNet.addAll(Inspection.crossingsByNet(sheet));
            sheet.listLettering().forEach(l -> texts.add(l.text()));
        }
        texts.forEach(text -> words.addAll(List.of(text.split("[ ,]+"))));
        for (AddedWire wire : plan.wires()) {
            assertThat(words).contains(wire.id().value());
        }
        for (AddedPart part : plan.parts()) {
            assertThat(words).contains(part.id().value());
        }
        for (PlacedJoint joint : new Joints(brief, plan).list()) {
            if (!(joint.place() instanceof End.OfPart) && !(joint.place() instanceof End.OfLead)) {
                assertThat(texts).as("joint %s", joint.name()).anyMatch(text -> text.startsWith(joint.name() + " "));
            }
        }
        int most = byNet.stream().mapToInt(Integer::intValue).max().orElse(0);
        System.out.printf(
                "inspect: %s: %d sheets, %d crossings, %d nets, at most %d at one%n",
                example.getFileName(), sheets.size(), crossings, byNet.size(), most);
        assertThat(crossings).isLessThanOrEqualTo(byNet.size());
        assertThat(most).isLessThanOrEqualTo(MOST_CROSSINGS_OF_A_NET);
    }
}
