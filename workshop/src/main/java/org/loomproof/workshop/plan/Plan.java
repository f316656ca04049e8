package org.loomproof.workshop.plan;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomproof.workshop.brief.kit.Choice;
import org.loomproof.workshop.brief.kit.LeadId;
import org.loomproof.workshop.words.Phrase;

/**
 * What happens to every lead, with parts, wires and reasons.
 *
 * @param settings options of the kit that are set otherwise than they come out of the box
 * @param hookups one a lead, in the kit's order
 * @param parts all added parts, in the order of their names' creation
 * @param wires all added wires
 * @param refusals wishes turned down
 * @param cautions what to beware of, where the work is
 */
public record Plan(
        List<Choice> settings,
        List<Hookup> hookups,
        List<AddedPart> parts,
        List<AddedWire> wires,
        List<Refusal> refusals,
        List<Phrase> cautions) {

    public Plan {
        settings = List.copyOf(settings);
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

    /** A plan in which the kit's options stay as they come. */
    public Plan(
            List<Hookup> hookups,
            List<AddedPart> parts,
            List<AddedWire> wires,
            List<Refusal> refusals,
            List<Phrase> cautions) {
        this(List.of(), hookups, parts, wires, refusals, cautions);
    }

    /** The same with options of the kit set. */
    public Plan withSettings(List<Choice> others) {
        return new Plan(others, hookups, parts, wires, refusals, cautions);
    }

    /** The same with other refusals. */
    public Plan withRefusals(List<Refusal> others) {
        return new Plan(settings, hookups, parts, wires, others, cautions);
    }

    /** The same with other hookups. */
    public Plan withHookups(List<Hookup> others) {
        return new Plan(settings, others, parts, wires, refusals, cautions);
    }

    /** The same with other parts. */
    public Plan withParts(List<AddedPart> others) {
        return new Plan(settings, hookups, others, wires, refusals, cautions);
    }

    /** The same with other wires. */
    public Plan withWires(List<AddedWire> others) {
        return new Plan(settings, hookups, parts, others, refusals, cautions);
    }

    /** The same with other cautions. */
    public Plan withCautions(List<Phrase> others) {
        return new Plan(settings, hookups, parts, wires, refusals, others);
    }

    /** The decision for a lead, if there is one. */
    public Optional<Hookup> findHookup(LeadId lead) {
        return hookups.stream().filter(h -> h.lead().equals(lead)).findFirst();
    }

    /** The other half of a connector's pole, which is the same wire going on; empty for every other end. */
    public Optional<End> findAcrossPole(End end) {
        return end instanceof End.OfPart(var id, var terminal)
                        && findPart(id).filter(AddedPart.Pole.class::isInstance).isPresent()
                ? Optional.of(new End.OfPart(id, terminal.equals("1") ? "2" : "1"))
                : Optional.empty();
    }

    /** The added part of that name, if there is one. */
    public Optional<AddedPart> findPart(AddedPartId id) {
        return parts.stream().filter(p -> p.id().equals(id)).findFirst();
    }
}
