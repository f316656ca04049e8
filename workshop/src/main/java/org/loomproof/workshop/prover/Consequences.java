package org.loomproof.workshop.prover;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.prover.damage.Break;
import org.loomproof.workshop.prover.damage.Damage;
import org.loomproof.workshop.prover.damage.DamageSearch;
import org.loomproof.workshop.prover.damage.Outcome;
import org.loomproof.workshop.prover.verdict.Severity;
import org.loomproof.workshop.words.Phrase;

/** All that follows from a damage. A fuse that opens stays open: what then follows is what follows from that fuse alone being out. */
final class Consequences {

    private final DamageSearch search;
    private final Plan plan;
    private final Map<PartId, Outcome> opened = new ConcurrentHashMap<>();

    Consequences(DamageSearch search, Plan plan) {
        this.search = search;
        this.plan = plan;
    }

    /**
     * What follows.
     *
     * @param severity a nuisance at least where something is undecided
     * @param breaks the claims that no longer hold, the worst first
     * @param undecided what could not be decided, in words
     */
    record All(Severity severity, List<Break> breaks, List<Phrase> undecided) {}

    All of(Outcome outcome) {
        List<Break> breaks = new ArrayList<>(outcome.breaks());
        Set<Phrase> undecided = new LinkedHashSet<>(outcome.trouble());
        for (PartId fuse : outcome.opened()) {
            Outcome after = opened.computeIfAbsent(fuse, f -> search.outcome(Damage.openedFuse(plan, f)));
            after.breaks().stream()
                    .filter(more -> breaks.stream().noneMatch(b -> b.claim().equals(more.claim())))
                    .forEach(breaks::add);
            undecided.addAll(after.trouble());
        }
        breaks.sort(Comparator.comparing(Break::severity));
        Severity least = undecided.isEmpty() ? Severity.NONE : Severity.NUISANCE;
        return new All(
                breaks.stream().map(Break::severity).reduce(least, Severity::or),
                List.copyOf(breaks),
                List.copyOf(undecided));
    }
}
