package org.loomproof.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomproof.papers.drawing.Inspection;
import org.loomproof.papers.drawing.PlacedDrawing;
import org.loomproof.papers.folder.FolderOutcome;
import org.loomproof.papers.folder.Paper;
import org.loomproof.papers.folder.PaperFolder;
import org.loomproof.papers.schematic.Schematic;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.goods.price.PriceList;
import org.loomproof.workshop.goods.shelf.Article;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.words.Messages;

class PapersTest {

    private static final String PLAN = "format: loomproof plan 1\n";

    private static final List<Paper> PAPERS = papers();

    private static List<Paper> papers() {
        return papers(SampleJob.brief(), SampleJob.plan());
    }

    private static List<Paper> papers(Brief brief, Plan plan) {
        PriceList prices = new PriceList(
                CurrencyUnit.EUR,
                new BigDecimal("78.00"),
                new BigDecimal("20"),
                30,
                Map.of(),
                Map.of(Article.Kind.FUSE, Map.of("", new BigDecimal("0.45"))));
        return Papers.of(
                new Material(brief, plan, SampleProof.proof(), Optional.empty(), PLAN),
                ShopFacts.ofPrices(Optional.of(prices)),
                Optional.empty(),
                Messages.english());
    }

    /** Those that are pages or drawings. */
    private static List<Paper> drawn(List<Paper> papers) {
        return papers.stream()
                .filter(paper -> paper.name().endsWith(".html") || paper.name().endsWith(".svg"))
                .toList();
    }

    /** Also leaves them where a person can look at them. */
    @Test
    void thePapersOfAJobAreThoseForBenchBayAndCustomer() {
        Path folder = Path.of("target", "sample-papers");
        assertThat(PAPERS)
                .extracting(Paper::name)
                .containsExactly(
                        "plan.yaml",
                        "bench-card.html",
                        "schematic.html",
                        "bay-sheet.html",
                        "commissioning.html",
                        "proof.html",
                        "warranty-record.html",
                        "pick-list.html",
                        "hand-over.html",
                        "quote.html",
                        "schematic.svg",
                        "details.svg",
                        "pick-list.csv",
                        "hand-over.txt",
                        "quote.txt");
        assertThat(PaperFolder.write(folder, PAPERS)).isEqualTo(new FolderOutcome.Written(folder));
    }

    @Test
    void thePlanIsPutInAsItWasGiven() {
        assertThat(PAPERS.getFirst().text()).isEqualTo(PLAN);
    }

    @Test
    void theSameJobGivesTheSameBytes() {
        assertThat(papers()).isEqualTo(PAPERS);
    }

    @Test
    void everyPageIsWellFormedAndFetchesNothing() {
        Pattern fetches = Pattern.compile("(src=|url\\(|@import|<script|<link|<iframe)");
        for (Paper paper : drawn(PAPERS)) {
            Reading.of(paper.text());
            assertThat(paper.text()).doesNotContainPattern(fetches);
            assertThat(paper.text().replaceAll("xmlns=\"http://www.w3.org/[a-z0-9/]*\"", ""))
                    .doesNotContain("http:", "https:");
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "</td><script>alert(1)</script>",
                "\" onload=\"alert(1)\" x='",
                "&lt;b&gt; & <!-- ]]> {0} ''",
                "\u202Egnidliub \u2066nedda\u2069 \u05E2\u05D1\u05E8\u05D9\u05EA \u0639\u0631\u0628\u064A",
                "\uD83D\uDE9A van \uD83D\uDD27\uD83C\uDFFD \uD800 lone \u0000\u0007 control",
                "Averyveryverylongnamewithoutanyplacetobreakit-Averyveryverylongnamewithoutanyplacetobreakit-"
                        + "Averyveryverylongnamewithoutanyplacetobreakit-Averyveryverylongnamewithoutanyplacetobreakit"
            })
    void namesThatMeanHarmAreOnlyText(String nasty) {
        HostileJob job = new HostileJob(nasty);
        List<Paper> papers = papers(job.brief(), job.plan());
        int elementsOfTheTameCard =
                Reading.of(PAPERS.get(1).text()).elements("*").size();
        for (Paper paper : drawn(papers)) {
            Reading read = Reading.of(paper.text());
            assertThat(read.elements("script")).isEmpty();
            assertThat(read.elements("*")).noneMatch(e -> e.hasAttribute("onload"));
            assertThat(paper.text()).doesNotContain("\u202E", "\u2066", "\u0000");
        }
        // The hostile card has a setting and a rejected option at each connected lead; apart from those nothing is
        // added.
        assertThat(Reading.of(papers.get(1).text()).elements("*").size() - elementsOfTheTameCard)
                .isLessThanOrEqualTo(4 * SampleJob.plan().hookups().size());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "-a-very-long-name-with-hyphens-and-more-of-them-than-anybody-wants",
                "\uD83D\uDE9A\u05E2\u05D1WWWWWWWWWWWWWWWW"
            })
    void longAndWideNamesDoNotSpoilTheDrawing(String nasty) {
        HostileJob job = new HostileJob(nasty);
        for (PlacedDrawing sheet : Schematic.sheets(job.brief(), job.plan(), SampleJob.words())) {
            Inspection found = Inspection.of(sheet);
            assertThat(found.overlaps()).isEmpty();
            assertThat(found.struck()).isEmpty();
            assertThat(found.outside()).isEmpty();
        }
    }

    /** A spreadsheet takes a cell that begins with such a sign for a formula. */
    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@x"})
    void noCellOfTheTableIsAFormula(String nasty) {
        HostileJob job = new HostileJob(nasty);
        String table = papers(job.brief(), job.plan()).stream()
                .filter(paper -> paper.name().equals("pick-list.csv"))
                .findFirst()
                .orElseThrow()
                .text();
        assertThat(table).contains("'" + nasty).doesNotContainPattern("(?m)(^|,)\"?[=+@-]");
    }

    @Test
    void anotherLanguageIsNamedOnThePage() {
        assertThat(PAPERS.get(1).text()).contains("lang=\"en\"");
    }
}
