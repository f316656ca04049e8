package org.loomproof.workshop.plan;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.kit.LeadId;

/**
 * What happens to every lead, with parts, wires and reasons.
 *
 * @param hookups one a lead, in the kit's order
 * @param parts all added parts, in the order of their names' creation
 * @param wires all added wires
 * @param refusals wishes turned down
 * @param cautions what to beware of, where the work is
 */
public record Plan(
        List<Hookup> hookups,
        List<AddedPart> parts,
        List<AddedWire> wires,
        List<Refusal> refusals,
        List<org.loomproof.workshop.words.Phrase> cautions) {

    public Plan {
        hookups = List.copyOf(hookups);
        parts = List.copyOf(parts);
        wires = List.copyOf(wires);
        refusals = List.copyOf(refusals);
        cautions = List.copyOf(cautions);
        Set<LeadId> decided = new HashSet<>();
        for (Hookup hookup : hookups) {
            if (!decided.add(hookup.lead())) {
                throw new IllegalArgumentException("lead " + hookup.lead() + " is decided twice");
            }
        }
    }

    /** The decision for a lead, if there is one. */
    public Optional<Hookup> findHookup(LeadId lead) {
        return hookups.stream().filter(h -> h.lead().equals(lead)).findFirst();
    }

    /** The added part of that name, if there is one. */
    public Optional<AddedPart> findPart(AddedPartId id) {
        return parts.stream().filter(p -> p.id().equals(id)).findFirst();
    }
}
