package org.loomproof.papers.schematic;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomproof.papers.drawing.Block;
import org.loomproof.papers.drawing.Conductor;
import org.loomproof.papers.drawing.Drawing;
import org.loomproof.papers.drawing.FontWidths;
import org.loomproof.papers.drawing.Ink;
import org.loomproof.papers.drawing.Pen;
import org.loomproof.papers.drawing.Port;
import org.loomproof.papers.drawing.Sketch;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.goods.joint.Joints;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedPartId;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;

/**
 * A part of a plan as blocks and conductors: the vehicle's circuits on the left, what is added in the middle, the controller on
 * the right, and a mark where a wire goes on on another sheet.
 */
final class PlanDrawing {

    private final Brief brief;
    private final Plan plan;
    private final SheetIndex index;
    private final Wording words;
    private final Nets nets;
    private final Connections connections;
    private final Sides sides;

    /**
     * The drawing to be made.
     *
     * @param sides of the whole plan
     * @param joints of the whole plan, which numbers them
     * @param index where everything else is drawn
     */
    PlanDrawing(Brief brief, Plan plan, Sides sides, Joints joints, SheetIndex index, Wording words) {
        this.brief = brief;
        this.plan = plan;
        this.index = index;
        this.words = words;
        this.nets = new Nets(plan);
        this.connections = new Connections(brief, plan, nets, joints, words);
        this.sides = sides;
    }

    /** Everything that is drawn, with these relays upside down. */
    Drawing drawing(Set<AddedPartId> turned) {
        List<Block> blocks = new ArrayList<>();
        addPanels(blocks);
        PartBlocks parts = new PartBlocks(brief.kit(), connections, nets, sides, turned, words);
        for (AddedPart part : plan.parts()) {
            parts.block(part).ifPresent(blocks::add);
        }
        connections.ownGrounds().forEach((wire, tag) -> blocks.add(ground(groundId(wire.value()), tag)));
        connections.goingOn().values().forEach(link -> blocks.add(goingOn(link)));
        PlugBlock plugs = new PlugBlock(plan, connections, words);
        leadsByPlug().forEach((plug, leads) -> plugs.block(plug, leads).ifPresent(blocks::add));
        List<Conductor> conductors =
                connections.links().stream().map(this::conductor).toList();
        return new Drawing(blocks, conductors);
    }

    private void addPanels(List<Block> blocks) {
        List<CircuitPanel> panels = new ArrayList<>();
        for (CircuitId id : circuits(plan)) {
            panels.add(
                    new CircuitPanel(brief.sheet().circuit(id), connections.lanes(id), index.also(id, words), words));
        }
        double width = panels.stream().mapToDouble(CircuitPanel::width).max().orElse(0);
        panels.forEach(panel -> blocks.add(panel.block(width)));
    }

    /** The circuits that are drawn with a part of a plan, in the order of the leads that need them. */
    static Set<CircuitId> circuits(Plan plan) {
        Set<CircuitId> wired = new LinkedHashSet<>();
        for (AddedWire wire : plan.wires()) {
            Connections.findCircuit(wire.from()).ifPresent(wired::add);
            Connections.findCircuit(wire.to()).ifPresent(wired::add);
        }
        Set<CircuitId> circuits = new LinkedHashSet<>();
        for (Hookup hookup : plan.hookups()) {
            if (hookup instanceof Hookup.Connect connect) {
                boolean isWired = plan.wires().stream().anyMatch(w -> isAt(connect, w.from()) || isAt(connect, w.to()));
                connect.circuits().stream()
                        .filter(id -> !isWired || wired.contains(id))
                        .forEach(circuits::add);
            }
        }
        circuits.addAll(wired);
        return circuits;
    }

    private static boolean isAt(Hookup.Connect connect, End end) {
        return end instanceof End.OfLead e && e.lead().equals(connect.lead());
    }

    private Map<String, List<Lead>> leadsByPlug() {
        Map<String, List<Lead>> plugs = new LinkedHashMap<>();
        for (Lead lead : brief.kit().leads()) {
            plugs.computeIfAbsent(lead.plug(), plug -> new ArrayList<>()).add(lead);
        }
        return plugs;
    }

    private static String groundId(String wire) {
        return "ground of " + wire;
    }

    private static Block ground(String id, Tag tag) {
        double width = tag.width() + 16;
        Sketch s = new Sketch();
        s.line(tag.pen(), 8, 12, width, 12);
        Symbols.ground(s, 8, 12, true);
        s.letter(11, 9, tag.text(), Ink.Anchor.START);
        return new Block(id, Block.Zone.MIDDLE, width, 20, List.of(new Port("body", Port.Side.RIGHT, 12)), s.ink());
    }

    private static String goingOnId(String wire) {
        return "other end of " + wire;
    }

    /** The wire by its name, and in a flag what it goes to and on which sheet. */
    private Block goingOn(Link link) {
        Tag tag = link.tag();
        String where = words.of("schematic.goes-on", words.end(link.tip()), index.sheetOf(link.tip()));
        double flag = FontWidths.width(where, Sketch.TYPE, false) + 12;
        double width = tag.width() + 8 + flag;
        boolean isRight = isRootLeft(link);
        double y = 12;
        double base = isRight ? width - flag : flag;
        double tip = isRight ? width - 0.5 : 0.5;
        double shoulder = isRight ? tip - 5 : tip + 5;
        Sketch s = new Sketch();
        s.line(tag.pen(), isRight ? 0 : width, y, base, y);
        s.outline(Pen.INK, base, y - 5, shoulder, y - 5, tip, y, shoulder, y + 5, base, y + 5);
        s.letter(isRight ? base + 3 : base - 3, y + 2.6, where, isRight ? Ink.Anchor.START : Ink.Anchor.END);
        s.letter(isRight ? 3 : width - 3, y - 3, tag.text(), isRight ? Ink.Anchor.START : Ink.Anchor.END);
        Port port = new Port("on", isRight ? Port.Side.LEFT : Port.Side.RIGHT, y);
        Block.Zone zone = isRight ? Block.Zone.RIGHT : Block.Zone.LEFT;
        return new Block(goingOnId(link.wire().value()), zone, width, 20, List.of(port), s.ink());
    }

    private boolean isRootLeft(Link link) {
        return rank(link.root()) <= rank(link.tip());
    }

    private Conductor conductor(Link link) {
        boolean rootIsLeft = isRootLeft(link);
        End left = rootIsLeft ? link.root() : link.tip();
        End right = rootIsLeft ? link.tip() : link.root();
        String wire = link.wire().value();
        return new Conductor(
                wire,
                block(left, wire),
                port(left, wire),
                block(right, wire),
                port(right, wire),
                link.tag().pen());
    }

    private double rank(End end) {
        return sides.rank(end).orElse(0);
    }

    private String block(End end, String wire) {
        if (nets.isElsewhere(end)) {
            return goingOnId(wire);
        }
        return switch (end) {
            case End.OfLead e -> PlugBlock.blockId(brief.kit().lead(e.lead()).plug());
            case End.OfPart e -> PartBlocks.blockId(e.part());
            case End.Tap e -> CircuitPanel.blockId(brief.sheet().circuit(e.circuit()));
            case End.CutBefore e -> CircuitPanel.blockId(brief.sheet().circuit(e.circuit()));
            case End.CutAfter e -> CircuitPanel.blockId(brief.sheet().circuit(e.circuit()));
            case End.Body e -> groundId(wire);
        };
    }

    private String port(End end, String wire) {
        if (nets.isElsewhere(end)) {
            return "on";
        }
        return switch (end) {
            case End.OfLead e -> e.lead().value();
            case End.OfPart e -> e.terminal();
            case End.Tap e -> CircuitPanel.portName(wire, end);
            case End.CutBefore e -> CircuitPanel.portName(wire, end);
            case End.CutAfter e -> CircuitPanel.portName(wire, end);
            case End.Body e -> "body";
        };
    }
}
