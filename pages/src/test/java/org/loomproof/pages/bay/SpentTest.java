package org.loomproof.pages.bay;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.loomproof.book.card.Author;
import org.loomproof.pages.work.Entry;
import org.loomproof.pages.work.Noted;
import org.loomproof.pages.work.Work;

/** Minutes of a job, step by step, and what of them later quotes go by. */
class SpentTest {

    private static final Instant NOW = Instant.parse("2026-11-26T09:00:00Z");

    private static Noted noted(Work work) {
        return new Noted(Entry.of(NOW, work), Author.CONSOLE, NOW);
    }

    @Test
    void everyStepOfThePlanCanBeTimedAndOnlyWhatQuotesCountIsCounted() {
        BayJob van = BayVan.planned();
        List<TimedStep> steps = TimedStep.of(Optional.of(van));
        assertThat(steps).extracting(TimedStep::id).doesNotHaveDuplicates();
        assertThat(steps)
                .extracting(TimedStep::id)
                .containsAll(van.steps().stream().map(BayStep::id).toList());
        int leads = van.plan().hookups().size();
        Spent spent = Spent.of(List.of(
                noted(new Work.MinutesSpent("check-in", 25)),
                noted(new Work.MinutesSpent("bench", leads)),
                noted(new Work.MinutesSpent("bench", leads)),
                noted(new Work.MinutesSpent("bay/side-lamps", 7.5)),
                noted(new Work.MinutesSpent("bay/starter", 31)),
                noted(new Work.MinutesSpent("other", 90)),
                noted(new Work.MinutesSpent("bay/of-another-plan", 12)),
                noted(new Work.PartUsed("tie", "", 4, ""))));
        assertThat(spent.sum()).isEqualTo(25 + 2 * leads + 7.5 + 31 + 90 + 12);
        assertThat(spent.parts()).hasSize(1);
        assertThat(spent.timings(steps))
                .as("the bench a lead, since quotes count leads")
                .containsExactlyInAnyOrder("check-in,25.00", "bench-lead,2.00", "tap,7.50", "cut,31.00");
    }

    @Test
    void aJobWithoutAPlanHasTheStepsBeforeAndAfter() {
        assertThat(TimedStep.of(Optional.empty()))
                .extracting(TimedStep::id)
                .containsExactly("check-in", "final-test", "hand-over", "other");
    }
}
