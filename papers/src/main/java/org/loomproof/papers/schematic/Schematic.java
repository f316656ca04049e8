package org.loomproof.papers.schematic;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.loomproof.papers.drawing.Block;
import org.loomproof.papers.drawing.Conductor;
import org.loomproof.papers.drawing.Drawing;
import org.loomproof.papers.drawing.Ink;
import org.loomproof.papers.drawing.LayeredLayout;
import org.loomproof.papers.drawing.PlacedDrawing;
import org.loomproof.papers.drawing.Port;
import org.loomproof.papers.drawing.Sketch;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.Brief;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.sheet.CircuitId;
import org.loomproof.workshop.goods.joint.Joints;
import org.loomproof.workshop.plan.AddedPart;
import org.loomproof.workshop.plan.AddedWire;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;

/** The vehicle's circuits on the left, what is added in the middle, the controller on the right. */
public final class Schematic {

    private final Brief brief;
    private final Plan plan;
    private final SheetIndex index;
    private final Wording words;
    private final Nets nets;
    private final Connections connections;
    private final Sides sides;

    private Schematic(Brief brief, Plan plan, Joints joints, SheetIndex index, Wording words) {
        this.brief = brief;
        this.plan = plan;
        this.index = index;
        this.words = words;
        this.nets = new Nets(plan);
        this.connections = new Connections(brief, plan, nets, joints, words);
        this.sides = new Sides(plan, nets);
    }

    /** The sheets, in the kit's order. */
    public static List<PlacedDrawing> sheets(Brief brief, Plan plan, Wording words) {
        // Joints are numbered over all sheets.
        Joints joints = new Joints(brief, plan);
        List<Plan> parts =
                Splitting.of(plan).intoSheets(part -> fits(drawing(brief, part, joints, SheetIndex.NONE, words)));
        // Where a sheet is cut moves the numbers of those behind it, and a number may be longer than the one before.
        List<List<PlacedDrawing>> cut = cut(
                brief,
                parts,
                joints,
                SheetIndex.of(parts, parts.stream().map(p -> 1).toList()),
                words);
        List<Integer> counts = cut.stream().map(List::size).toList();
        cut = cut(brief, parts, joints, SheetIndex.of(parts, counts), words);
        int count = cut.stream().mapToInt(List::size).sum();
        SheetFrame frame = new SheetFrame(brief, words);
        List<PlacedDrawing> sheets = new ArrayList<>();
        for (List<PlacedDrawing> part : cut) {
            for (PlacedDrawing content : part) {
                sheets.add(frame.around(content, sheets.size() + 1, count, part.size() == 1));
            }
        }
        return sheets;
    }

    private static List<List<PlacedDrawing>> cut(
            Brief brief, List<Plan> parts, Joints joints, SheetIndex index, Wording words) {
        List<List<PlacedDrawing>> cut = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            Drawing drawing = drawing(brief, parts.get(i), joints, index.seenFrom(i), words);
            cut.add(PageCut.of(LayeredLayout.place(drawing), words));
        }
        return cut;
    }

    /** A part of a plan by itself, without the sheet's frame; its joints have the numbers given. */
    public static PlacedDrawing detail(Brief brief, Plan part, Joints joints, Wording words) {
        return LayeredLayout.place(drawing(brief, part, joints, SheetIndex.NONE, words));
    }

    /** The vehicle's column alone often shows that there is no room, long before everything has a place. */
    private static boolean fits(Drawing drawing) {
        double column = drawing.blocks().stream()
                .filter(b -> b.zone() == Block.Zone.LEFT)
                .mapToDouble(Block::height)
                .sum();
        return SheetFrame.fits(0, column) && SheetFrame.fits(LayeredLayout.placeQuickly(drawing));
    }

    private static Drawing drawing(Brief brief, Plan plan, Joints joints, SheetIndex index, Wording words) {
        return new Schematic(brief, plan, joints, index, words).drawing();
    }

    private Drawing drawing() {
        List<Block> blocks = new ArrayList<>();
        addPanels(blocks);
        PartBlocks parts = new PartBlocks(brief.kit(), connections, nets, sides, words);
        for (AddedPart part : plan.parts()) {
            parts.block(part).ifPresent(blocks::add);
        }
        connections.ownGrounds().forEach((wire, tag) -> blocks.add(ground(groundId(wire.value()), tag)));
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

    /** The circuits that a plan touches, in the order of the leads that need them. */
    static Set<CircuitId> circuits(Plan plan) {
        Set<CircuitId> circuits = new LinkedHashSet<>();
        for (Hookup hookup : plan.hookups()) {
            if (hookup instanceof Hookup.Connect connect) {
                circuits.addAll(connect.circuits());
            }
        }
        for (AddedWire wire : plan.wires()) {
            Connections.findCircuit(wire.from()).ifPresent(circuits::add);
            Connections.findCircuit(wire.to()).ifPresent(circuits::add);
        }
        return circuits;
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

    private Conductor conductor(Link link) {
        boolean rootIsLeft = rank(link.root()) <= rank(link.tip());
        End left = rootIsLeft ? link.root() : link.tip();
        End right = rootIsLeft ? link.tip() : link.root();
        String wire = link.wire().value();
        return new Conductor(
                wire, block(left, wire), port(left, wire), block(right, wire), port(right, wire), link.pen());
    }

    private double rank(End end) {
        OptionalDouble rank = sides.rank(end);
        return rank.orElse(0);
    }

    private String block(End end, String wire) {
        return switch (end) {
            case End.OfLead e -> PlugBlock.blockId(brief.kit().lead(e.lead()).plug());
            case End.OfPart e -> PartBlocks.blockId(e.part());
            case End.Tap e -> CircuitPanel.blockId(brief.sheet().circuit(e.circuit()));
            case End.CutBefore e -> CircuitPanel.blockId(brief.sheet().circuit(e.circuit()));
            case End.CutAfter e -> CircuitPanel.blockId(brief.sheet().circuit(e.circuit()));
            case End.Body e -> groundId(wire);
        };
    }

    private static String port(End end, String wire) {
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
