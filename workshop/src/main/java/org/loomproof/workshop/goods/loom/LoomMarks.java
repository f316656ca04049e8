package org.loomproof.workshop.goods.loom;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.brief.kit.LeadRole;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;

/**
 * Which leads are twisted and which are labelled. Leads of one plug that go behind the same panel are twisted loosely, so that
 * the company a lead keeps says which it is; where that does not tell, or a lead goes alone, it is labelled. Supply and ground
 * are thick and stay out of any twist. Leads of several plugs are told apart by their plugs. Common practice, no published source.
 *
 * @param marks what is done to a lead that looks like another of its plug; no others are in it
 */
public record LoomMarks(Map<LeadId, LeadMark> marks) {

    public LoomMarks {
        marks = Map.copyOf(marks);
    }

    /** The marks for a plan. */
    public static LoomMarks of(Brief brief, Plan plan) {
        return new LoomMarks(new Marking(brief, plan).marks());
    }

    /** What is done to a lead; nothing where no other of its plug looks like it. */
    public Optional<LeadMark> find(LeadId lead) {
        return Optional.ofNullable(marks.get(lead));
    }

    private record Marking(Brief brief, Plan plan) {

        Map<LeadId, LeadMark> marks() {
            Map<LeadId, LeadMark> marks = new LinkedHashMap<>();
            for (Lead lead : brief.kit().leads()) {
                List<Lead> alike = samePlug(lead).stream()
                        .filter(other -> !isTrimmed(other) && looksLike(lead, other))
                        .toList();
                if (!alike.isEmpty()) {
                    marks.put(lead.id(), mark(lead, ids(alike)));
                }
            }
            return marks;
        }

        private LeadMark mark(Lead lead, List<LeadId> alike) {
            if (isTrimmed(lead)) {
                return new LeadMark.TrimAfter(alike);
            }
            List<Lead> with = twist(lead);
            boolean tells = with.stream().noneMatch(other -> alike.contains(other.id()));
            return with.isEmpty() || !tells
                    ? new LeadMark.Label(alike)
                    : new LeadMark.Twist(alike, ids(with), panel(lead).orElseThrow());
        }

        /** The others of its plug that go where it goes; none where it goes alone or nobody says where. */
        private List<Lead> twist(Lead lead) {
            Optional<String> panel = panel(lead);
            return panel.isEmpty()
                    ? List.of()
                    : samePlug(lead).stream()
                            .filter(other -> panel(other).equals(panel))
                            .toList();
        }

        private Optional<String> panel(Lead lead) {
            if (lead.role() == LeadRole.SUPPLY || lead.role() == LeadRole.GROUND) {
                return Optional.empty();
            }
            return plan.findHookup(lead.id())
                    .filter(Hookup.Connect.class::isInstance)
                    .map(Hookup.Connect.class::cast)
                    .flatMap(connect -> connect.circuits().stream().findFirst())
                    .map(circuit -> brief.sheet().circuit(circuit).where().panel())
                    .filter(panel -> !panel.isBlank());
        }

        private boolean isTrimmed(Lead lead) {
            return plan.findHookup(lead.id())
                    .filter(Hookup.Trim.class::isInstance)
                    .isPresent();
        }

        private List<Lead> samePlug(Lead lead) {
            return brief.kit().leads().stream()
                    .filter(other ->
                            other.plug().equals(lead.plug()) && !other.id().equals(lead.id()))
                    .toList();
        }

        private static boolean looksLike(Lead one, Lead other) {
            return one.colour()
                    .flatMap(colour -> other.colour().map(colour::looksLike))
                    .orElse(false);
        }

        private static List<LeadId> ids(List<Lead> leads) {
            return leads.stream().map(Lead::id).toList();
        }
    }
}
