package org.loomproof.workshop.planner.rule;

import java.util.List;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.order.Wish;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.planner.coupling.Draft;
import org.loomproof.workshop.words.Phrase;

/** What an option decides for one lead, before parts and wires have numbers. */
public sealed interface Decision {

    /** Which lead. */
    LeadId lead();

    /**
     * Joined through a coupling.
     *
     * @param of the lead
     * @param serves the wish it serves
     * @param circuits the factory circuits it acts on or reads
     * @param draft what stands between
     * @param because why
     * @param insteadOf what else was thought of, each with the reason it lost
     */
    record Join(Lead of, Wish serves, List<CircuitId> circuits, Draft draft, Phrase because, List<Phrase> insteadOf)
            implements Decision {
        public Join {
            circuits = List.copyOf(circuits);
            insteadOf = List.copyOf(insteadOf);
        }

        @Override
        public LeadId lead() {
            return of.id();
        }
    }

    /** Not joined: trimmed, capped and kept, or on hold. */
    record Leave(Hookup hookup) implements Decision {
        @Override
        public LeadId lead() {
            return hookup.lead();
        }
    }
}
