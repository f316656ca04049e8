package org.loomproof.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.loomproof.papers.report.ProofReport;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.verdict.ClaimResult;
import org.loomproof.workshop.prover.verdict.Proof;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.prover.verdict.Witness;
import org.w3c.dom.Element;

class ProofReportTest {

    private static Reading report(Plan plan, Proof proof) {
        return Reading.of(ProofReport.page(SampleJob.brief(), plan, proof, List.of(), SampleJob.words())
                .html());
    }

    private static final Reading REPORT = report(SampleJob.plan(), SampleProof.proof());

    private static Element section(String id) {
        return REPORT.elements("section").stream()
                .filter(s -> s.getAttribute("id").equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatIsNotToBeDoneComesFirst() {
        assertThat(REPORT.elements("section").stream()
                        .map(s -> s.getAttribute("id"))
                        .filter(id -> !id.isEmpty()))
                .containsExactly("refused", "waiting", "broken", "open", "holds", "assumptions");
    }

    @Test
    void everyClaimStandsThereOnce() {
        List<String> ids = REPORT.elements("p", "claim-id").stream()
                .map(Element::getTextContent)
                .toList();
        assertThat(ids)
                .containsExactlyInAnyOrderElementsOf(SampleProof.proof().results().stream()
                        .map(ClaimResult::id)
                        .toList());
    }

    @Test
    void theCountsAreThoseOfTheProof() {
        assertThat(REPORT.elements("ul", "tiles").getFirst().getTextContent().replaceAll("\\s+", " "))
                .contains("5claims hold", "1claims broken", "1claims open", "1wishes refused", "1leads on hold");
    }

    @Test
    void aBrokenClaimShowsNumberedStepsAndWhatTheMeterShows() {
        Element broken = section("broken");
        assertThat(broken.getElementsByTagName("ol").item(0).getTextContent().strip())
                .startsWith("Start the engine and let it idle.")
                .endsWith("Open the rear doors.");
        assertThat(broken.getTextContent())
                .contains("Lead P2-3 against the body: 2.6 V")
                .contains("0.6 V")
                .contains("rear-doors at open; battery at 13.8 V (engine running); controller armed");
    }

    @Test
    void anOpenClaimSaysWhichReadingSettlesIt() {
        assertThat(section("open").getTextContent())
                .contains("the current to the body from the left door's wire, door shut");
    }

    @Test
    void aClaimThatHoldsNamesItsMarginItsSituationAndItsAssumptions() {
        Element first =
                (Element) section("holds").getElementsByTagName("article").item(0);
        assertThat(first.getTextContent())
                .contains("0.06 V less than before", "at most 0.2 V less", "0.14 V")
                .contains("key at start; battery at 9 V (cranking); controller disarmed");
        assertThat(first.getElementsByTagName("a").getLength()).isEqualTo(2);
        assertThat(section("assumptions").getElementsByTagName("tr").getLength())
                .isEqualTo(3);
    }

    @Test
    void everyLinkLeadsSomewhere() {
        List<String> ids =
                REPORT.elements("*").stream().map(e -> e.getAttribute("id")).toList();
        assertThat(REPORT.elements("a"))
                .isNotEmpty()
                .allMatch(a -> ids.contains(a.getAttribute("href").substring(1)));
    }

    @Test
    void verdictsAreToldByWordAndByShape() {
        for (String section : List.of("broken", "open", "holds")) {
            Element heading =
                    (Element) section(section).getElementsByTagName("h3").item(0);
            assertThat(heading.getElementsByTagName("svg").getLength()).isEqualTo(1);
            assertThat(heading.getTextContent()).isNotBlank();
        }
        assertThat(section("broken").getTextContent()).contains("Broken");
    }

    @Test
    void theAnswerFollowsTheWorstVerdict() {
        Proof allHold = new Proof(
                SampleProof.proof().results().stream()
                        .filter(r -> r.verdict() instanceof Verdict.Holds)
                        .toList(),
                SampleProof.proof().effort(),
                List.of());
        Plan nothingRefused = new Plan(
                SampleJob.plan().hookups().subList(0, 18),
                SampleJob.plan().parts(),
                SampleJob.plan().wires(),
                List.of(),
                List.of());
        assertThat(REPORT.text()).contains("A claim is broken. Do not build this plan.");
        assertThat(report(nothingRefused, allHold).text()).contains("Every claim holds. The plan may be built");
        assertThat(report(SampleJob.plan(), allHold).text()).contains("Not proven yet");
        Proof nothingProven = new Proof(List.of(), SampleProof.proof().effort(), List.of());
        assertThat(report(nothingRefused, nothingProven).text()).contains("Not proven yet");
    }

    @Test
    void aDeclaredChangeStandsBeforeWhatHoldsWithWhatTheCustomerSigns() {
        Proof sample = SampleProof.proof();
        Witness witness = sample.results().stream()
                .flatMap(r -> r.verdict() instanceof Verdict.Broken broken
                        ? Stream.of(broken.witness())
                        : Stream.<Witness>empty())
                .findFirst()
                .orElseThrow();
        List<ClaimResult> results = sample.results().stream()
                .filter(r -> !(r.verdict() instanceof Verdict.Open))
                .map(r -> r.verdict() instanceof Verdict.Broken broken
                        ? r.with(new Verdict.Declared(
                                LettersTest.DIMMED, broken.worst().computed(), witness))
                        : r)
                .toList();
        Plan decided = new Plan(
                SampleJob.plan().hookups().subList(0, 18),
                SampleJob.plan().parts(),
                SampleJob.plan().wires(),
                List.of(),
                List.of());
        Reading page = report(decided, new Proof(results, sample.effort(), List.of()));
        assertThat(page.elements("section").stream()
                        .map(s -> s.getAttribute("id"))
                        .filter(id -> !id.isEmpty()))
                .containsExactly("declared", "holds", "assumptions");
        assertThat(page.text())
                .contains("once the customer has signed for that", "1changes to sign for")
                .contains("The reading lamp is dimmer.", "the lamp hangs behind a diode");
    }

    @Test
    void theLastWordIsSomebodyElses() {
        assertThat(REPORT.text())
                .contains("The vehicle maker's instructions, the law of the place and licensed practice come before");
    }

    @Test
    void boundsAndEffortAreStated() {
        assertThat(REPORT.text())
                .contains(
                        "15 modes of the controller, reached by 86 transitions; 4,320 situations, 51,840 operating points solved, 96 corners")
                .contains("At most two figures were moved to a corner");
    }
}
