package org.loomproof.workshop.prover;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.complete.SheetCompletion;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.read.BriefReader;
import org.loomproof.workshop.brief.read.ReadBrief;
import org.loomproof.workshop.fixture.Altered;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.planner.Planner;
import org.loomproof.workshop.problem.Checked;
import org.loomproof.workshop.prover.verdict.Verdict;
import org.loomproof.workshop.trade.template.TradeDefaults;

/** A motor that gets its volts the wrong way round does not do its work: the lock output that unlocks is found out. */
class MotorDirectionTest {

    @ParameterizedTest
    @ValueSource(strings = {"locks-legs-at-ground", "locks-legs-at-supply", "locks-legs-floating", "locks-either-pole"})
    void lockAndUnlockLeadsThatAreSwappedAreBroken(String example) {
        Path folder = Path.of("..", "examples", "circuits", example);
        TradeDefaults usual = TradeDefaults.read();
        Checked<ReadBrief> read = new BriefReader(usual, new SheetCompletion(usual))
                .read(folder.resolve("sheet.yaml"), folder.resolve("kit.yaml"), folder.resolve("order.yaml"));
        Brief brief = ((Checked.Good<ReadBrief>) read).value().brief();
        Plan plan = Planner.plan(brief).plans().getFirst();
        List<String> locks = plan.hookups().stream()
                .filter(h -> h instanceof Hookup.Connect c && c.serves() == Wish.LOCKS)
                .map(h -> h.lead().value())
                .toList();
        Plan swapped = Altered.ends(plan, end -> swap(end, locks));

        assertThat(broken(brief, plan)).isEmpty();
        assertThat(broken(brief, swapped)).hasSize(2).allMatch(id -> id.startsWith("does-its-work"));
    }

    private static End swap(End end, List<String> leads) {
        if (end instanceof End.OfLead(var lead) && leads.contains(lead.value())) {
            String other = leads.get(1 - leads.indexOf(lead.value()));
            return new End.OfLead(new LeadId(other));
        }
        return end;
    }

    private static List<String> broken(Brief brief, Plan plan) {
        return Prover.prove(brief, plan).results().stream()
                .filter(r -> r.verdict() instanceof Verdict.Broken)
                .map(r -> r.id())
                .toList();
    }
}
