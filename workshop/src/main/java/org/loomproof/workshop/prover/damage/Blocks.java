package org.loomproof.workshop.prover.damage;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomproof.network.part.PartId;
import org.loomproof.workshop.brief.sheet.OperableId;
import org.loomproof.workshop.prover.explore.Area;
import org.loomproof.workshop.prover.explore.Case;
import org.loomproof.workshop.prover.explore.Vehicle;
import org.loomproof.workshop.wiring.WorkedSwitch;

/**
 * What the areas of a damaged vehicle fall into while the controller's own supply and ground are taken to be held: what is in
 * one block feels another through these two alone.
 *
 * @param parts of each block, with and without the damage
 * @param contacts what is operated, in either vehicle
 */
record Blocks(List<Set<PartId>> parts, List<WorkedSwitch> contacts) {

    static Blocks of(AsPlanned job, Vehicle damaged) {
        List<Set<PartId>> parts = new ArrayList<>();
        for (Vehicle vehicle : List.of(job.fitted(), damaged)) {
            Area.blocks(job.stock().wired(), vehicle.wired()).forEach(block -> parts.add(block.parts()));
        }
        List<WorkedSwitch> contacts = Stream.concat(
                        job.stock().wired().switches().stream(), damaged.wired().switches().stream())
                .toList();
        return new Blocks(parts, contacts);
    }

    /** What is operated in the blocks of these parts. */
    Set<OperableId> operables(Set<PartId> of) {
        Set<PartId> near = new LinkedHashSet<>();
        parts.stream().filter(block -> block.stream().anyMatch(of::contains)).forEach(near::addAll);
        return contacts.stream()
                .filter(contact -> near.contains(contact.part()))
                .map(WorkedSwitch::operatedBy)
                .collect(Collectors.toSet());
    }

    /** What is operated in the blocks that a case speaks of. */
    Set<OperableId> operables(Case each) {
        Set<PartId> spokenOf = new LinkedHashSet<>(Set.of(each.about()));
        contacts.stream()
                .filter(contact -> each.asksAbout().contains(contact.operatedBy()))
                .forEach(contact -> spokenOf.add(contact.part()));
        return operables(spokenOf);
    }
}
