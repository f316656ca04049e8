package org.loomproof.papers.schematic;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomproof.papers.drawing.Pen;
import org.loomproof.papers.page.Insulation;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.goods.joint.Joints;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Plan;
import org.loomproof.workshop.plan.WireId;
import org.loomproof.workshop.trade.colour.WireColour;

/**
 * Decides how each added wire appears: as a line between blocks, as a stub that ends at the body, inside a relay's symbol, or
 * as a line that goes on on another sheet. Each net is drawn as a star from one of its ends, the lead where it has one; that is the same net, and the dots
 * show it.
 */
final class Connections {

    /** A wire's end at a factory circuit. */
    record Lane(WireId wire, End end, Tag tag, boolean grounded) {}

    private final Brief brief;
    private final Wording words;
    private final Nets nets;
    private final Joints joints;
    private final List<Link> links = new ArrayList<>();
    private final Map<CircuitId, List<Lane>> lanes = new LinkedHashMap<>();
    private final Map<End, List<Tag>> tags = new LinkedHashMap<>();
    private final Map<AddedPartId, List<String>> clampTags = new LinkedHashMap<>();
    private final Map<WireId, Tag> ownGrounds = new LinkedHashMap<>();
    private final Map<WireId, Link> goingOn = new LinkedHashMap<>();
    private final Set<End> grounded = new LinkedHashSet<>();
    private final Set<WireId> drawn = new LinkedHashSet<>();

    Connections(Brief brief, Plan plan, Nets nets, Joints joints, Wording words) {
        this.brief = brief;
        this.words = words;
        this.nets = nets;
        this.joints = joints;
        nets.list().forEach(this::addNet);
        plan.wires().stream().filter(w -> !drawn.contains(w.id())).forEach(this::addOuter);
    }

    private void addNet(Set<End> net) {
        End root = root(net);
        Deque<End> next = new ArrayDeque<>(List.of(root));
        while (!next.isEmpty()) {
            End here = next.removeFirst();
            for (AddedWire wire : nets.listWires(here)) {
                if (drawn.add(wire.id())) {
                    End there = Nets.other(wire, here);
                    addBranch(root, here, there, wire);
                    if (nets.isInner(there)) {
                        next.addLast(there);
                    }
                }
            }
        }
    }

    private End root(Set<End> net) {
        Optional<End> lead = net.stream().filter(End.OfLead.class::isInstance).findFirst();
        return lead.or(() -> net.stream().filter(e -> !isAtClamp(e)).findFirst())
                .orElse(net.iterator().next());
    }

    private boolean isAtClamp(End end) {
        return end instanceof End.OfPart e && nets.isClamp(e.part());
    }

    private void addBranch(End root, End here, End there, AddedWire wire) {
        Tag tag = tag(wire);
        switch (there) {
            case End.Tap e -> addLane(e.circuit(), root, there, wire);
            case End.CutBefore e -> addLane(e.circuit(), root, there, wire);
            case End.CutAfter e -> addLane(e.circuit(), root, there, wire);
            case End.Body e -> addBody(root, here, wire);
            case End.OfLead e -> addInner(root, there, wire, tag);
            case End.OfPart e -> {
                if (nets.isInner(there) && nets.isClamp(e.part())) {
                    clampTags
                            .computeIfAbsent(e.part(), p -> new ArrayList<>())
                            .add(wire.id().value());
                } else {
                    addInner(root, there, wire, tag);
                }
            }
        }
    }

    private void addInner(End root, End there, AddedWire wire, Tag tag) {
        if (nets.isElsewhere(there)) {
            Link link = new Link(wire.id(), root, there, tag);
            goingOn.put(wire.id(), link);
            links.add(link);
            return;
        }
        tags.computeIfAbsent(there, e -> new ArrayList<>()).add(tag);
        if (!root.equals(there)) {
            links.add(new Link(wire.id(), root, there, tag));
        }
    }

    private void addLane(CircuitId circuit, End root, End there, AddedWire wire) {
        Tag tag = tag(wire, there);
        lanes.computeIfAbsent(circuit, c -> new ArrayList<>()).add(new Lane(wire.id(), there, tag, false));
        links.add(new Link(wire.id(), root, there, tag));
    }

    /** A wire to the body is a stub with the body's symbol, unless its terminal has other wires to be drawn. */
    private void addBody(End root, End here, AddedWire wire) {
        Tag tag = tag(wire, new End.Body());
        boolean isAlone = root.equals(here)
                && nets.listWires(here).stream().allMatch(w -> w.equals(wire) || isAtClamp(Nets.other(w, here)));
        if (isAlone) {
            grounded.add(here);
            tags.computeIfAbsent(here, e -> new ArrayList<>()).add(tag);
        } else {
            ownGrounds.put(wire.id(), tag);
            links.add(new Link(wire.id(), root, new End.Body(), tag));
        }
    }

    /** A wire from one factory wire to another, or to the body. */
    private void addOuter(AddedWire wire) {
        Tag tag = tag(wire);
        List<End> ends = List.of(wire.from(), wire.to());
        boolean toBody = ends.stream().anyMatch(End.Body.class::isInstance);
        for (End end : ends) {
            findCircuit(end)
                    .ifPresent(c -> lanes.computeIfAbsent(c, id -> new ArrayList<>())
                            .add(new Lane(wire.id(), end, tag(wire, end), toBody)));
        }
        if (!toBody) {
            links.add(new Link(wire.id(), wire.from(), wire.to(), tag));
        }
    }

    /** The circuit at which a wire ends, when it ends at one. */
    static Optional<CircuitId> findCircuit(End end) {
        return switch (end) {
            case End.Tap e -> Optional.of(e.circuit());
            case End.CutBefore e -> Optional.of(e.circuit());
            case End.CutAfter e -> Optional.of(e.circuit());
            case End.OfLead e -> Optional.empty();
            case End.OfPart e -> Optional.empty();
            case End.Body e -> Optional.empty();
        };
    }

    private Tag tag(AddedWire wire) {
        Optional<Lead> lead = findLead(wire.from()).or(() -> findLead(wire.to()));
        String letters = lead.flatMap(Lead::colour).map(c -> c.letters() + " ").orElse("");
        return new Tag(
                words.of("schematic.tag", wire.id().value(), letters, words.wire(wire)),
                lead.map(Connections::pen)
                        .orElse(pen(Optional.empty()))
                        .drawing(wire.id().value()));
    }

    /** The same with the joint at which the wire ends there. */
    private Tag tag(AddedWire wire, End place) {
        Tag tag = tag(wire);
        return joints.find(place, wire)
                .map(joint -> new Tag(words.of("schematic.joint-tag", joint.name(), tag.text()), tag.pen()))
                .orElse(tag);
    }

    private Optional<Lead> findLead(End end) {
        return end instanceof End.OfLead e ? Optional.of(brief.kit().lead(e.lead())) : Optional.empty();
    }

    /** A lead's own colours. */
    static Pen pen(Lead lead) {
        return pen(lead.colour());
    }

    /** The colours of insulation, or a neutral one where nobody said any. */
    static Pen pen(Optional<WireColour> colour) {
        return Pen.conductor(
                colour.map(Insulation::base).orElse(Insulation.UNSAID),
                colour.flatMap(WireColour::tracer).map(Insulation::hex));
    }

    /** Wires to be drawn between blocks. */
    List<Link> links() {
        return links;
    }

    /** The wires that end at a circuit, in the order in which nets reach it. */
    List<Lane> lanes(CircuitId circuit) {
        return lanes.getOrDefault(circuit, List.of());
    }

    /** What is written at a lead's or a terminal's end. */
    List<Tag> tags(End end) {
        return tags.getOrDefault(end, List.of());
    }

    /** True when the end's one wire goes to the body. */
    boolean isGrounded(End end) {
        return grounded.contains(end);
    }

    /** Wires to the body that get a symbol apart, with what is written on them. */
    Map<WireId, Tag> ownGrounds() {
        return ownGrounds;
    }

    /** Wires that go on on another sheet, from their root here to their tip there. */
    Map<WireId, Link> goingOn() {
        return goingOn;
    }

    /** The wires of a diode that is drawn at a relay's coil. */
    List<String> clampTags(AddedPartId diode) {
        return clampTags.getOrDefault(diode, List.of());
    }
}
