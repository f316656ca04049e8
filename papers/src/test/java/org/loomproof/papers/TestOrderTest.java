package org.loomproof.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.loomproof.papers.page.Page;
import org.loomproof.papers.trial.CommissioningRecord;
import org.loomproof.papers.trial.TestOrderPage;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.sheet.Operable;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.FaultProof;
import org.loomproof.workshop.prover.FaultProver;
import org.loomproof.workshop.prover.FaultWatch;
import org.loomproof.workshop.prover.MishapResult;
import org.loomproof.workshop.prover.verdict.Severity;
import org.loomproof.workshop.weigh.Weigher;
import org.w3c.dom.Element;

/** The papers by which a finished car is passed, of a small hatchback with a starter interrupt. */
class TestOrderTest {

    private static final Brief BRIEF = Examples.brief(Examples.FOLDER.resolve("small-hatchback"));
    private static final Plan PLAN = new Weigher().weigh(BRIEF).plan();
    private static final FaultProof FAULTS = FaultProver.prove(BRIEF, PLAN, FaultWatch.PATIENT);

    static Page testOrder() {
        return TestOrderPage.page(BRIEF, PLAN, FAULTS, SampleJob.words());
    }

    static Page commissioning() {
        return CommissioningRecord.page(BRIEF, PLAN, SampleJob.words());
    }

    private static List<String> rows() {
        return Reading.of(testOrder().html()).elements("table", "visits").stream()
                .flatMap(table -> Reading.bodyRows(table).stream())
                .map(Element::getTextContent)
                .toList();
    }

    @Test
    void everyTestOfTheOrderStandsThereOnceWithRoomForWhatWasSeen() {
        assertThat(rows()).hasSameSizeAs(FAULTS.testOrder().tests());
        Reading page = Reading.of(testOrder().html());
        assertThat(page.elements("p", "reading").size())
                .isGreaterThanOrEqualTo(FAULTS.testOrder().tests().size());
    }

    /** What an interrupt is for: the starter turns while disarmed, and does not while armed. Common practice. */
    @Test
    void theStarterTurnsWhenDisarmedAndNotWhenArmed() {
        String start = "then try to start";
        assertThat(rows())
                .filteredOn(row -> row.contains(start) && row.contains("From armed"))
                .hasSize(1)
                .first()
                .asString()
                .containsPattern("key at start: [^\\n]*rests: [^\\n;]*starter-solenoid of circuit starter");
        assertThat(rows())
                .filteredOn(row -> row.contains(start) && row.contains("From disarmed"))
                .isNotEmpty()
                .first()
                .asString()
                .containsPattern("key at start: works: [^\\n;]*starter-solenoid of circuit starter");
    }

    @Test
    void anOpenedDoorGivesAlarm() {
        assertThat(rows())
                .filteredOn(row -> row.contains("open ") && row.contains("From armed"))
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row).contains("alarm").doesNotContain("no alarm"));
    }

    /** No line may ask for a thing and for its contrary. */
    @Test
    void nothingWorksAndRestsAtTheSameMoment() {
        List<Element> lines = Reading.of(testOrder().html()).elements("p", "reading");
        assertThat(lines).isNotEmpty().allSatisfy(line -> {
            Set<String> works = named(line.getTextContent(), "works: ");
            assertThat(named(line.getTextContent(), "rests: "))
                    .as(line.getTextContent())
                    .noneMatch(works::contains);
            assertThat(line.getTextContent().split("(works|rests): ", -1).length)
                    .as(line.getTextContent())
                    .isLessThanOrEqualTo(3);
        });
    }

    private static Set<String> named(String line, String verb) {
        int at = line.indexOf(verb);
        return at < 0
                ? Set.of()
                : Set.of(line.substring(at + verb.length()).split(";", -1)[0].split(", ", -1));
    }

    @Test
    void whatNoTestNoticesIsLookedAt() {
        String text = testOrder().html();
        for (int k = 0; k < FAULTS.results().size(); k++) {
            MishapResult result = FAULTS.results().get(k);
            if (!FAULTS.isNoticed(k) && result.severity() != Severity.NONE) {
                assertThat(text)
                        .contains(SampleJob.words().of(result.mishap().inspection()))
                        .contains(SampleJob.words().of(result.mishap().words()));
            }
        }
    }

    @Test
    void whatCouldBurnAndWhatStrandsTheDriverIsTold() {
        long grave = FAULTS.results().stream()
                .filter(r -> r.severity().compareTo(Severity.STRANDED) <= 0)
                .count();
        List<Element> lists = Reading.of(testOrder().html()).elements("ul", "mishaps");
        assertThat(grave).isPositive();
        assertThat(lists.stream()
                        .mapToInt(list -> list.getElementsByTagName("li").getLength())
                        .sum())
                .isEqualTo((int) grave);
    }

    @Test
    void aStoppedSearchIsSaidToBeUnfinished() {
        FaultProof stopped = FaultProver.prove(BRIEF, PLAN, new FaultWatch() {
            @Override
            public void lookedAt(int done, int all) {}

            @Override
            public boolean isEnough() {
                return true;
            }
        });
        assertThat(stopped.left()).isPositive();
        assertThat(TestOrderPage.page(BRIEF, PLAN, stopped, SampleJob.words()).html())
                .contains(stopped.left() + " faults and slips were not looked at");
        assertThat(testOrder().html()).doesNotContain("were not looked at, and");
    }

    /** Everything that can be operated is tried four times: at check-in, without the kit's fuse, disarmed, and at the end. */
    @Test
    void everythingTheCarDidBeforeIsTriedAtCheckInAndAgain() {
        Element table =
                Reading.of(commissioning().html()).elements("table", "turns").getFirst();
        int positions = BRIEF.sheet().operables().stream()
                .map(Operable::positions)
                .mapToInt(p -> p.size() - 1)
                .sum();
        assertThat(Reading.bodyRows(table))
                .hasSize(positions)
                .allSatisfy(row -> assertThat(row.getElementsByTagName("input").getLength())
                        .isEqualTo(4));
    }

    @Test
    void theSleepCurrentStandsBesideTheOneOfCheckIn() {
        assertThat(commissioning().html()).containsPattern("sleep current, armed.*check-in and [0-9.]+.mA more");
    }
}
