package org.loomproof.papers.schematic;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomproof.papers.drawing.Block;
import org.loomproof.papers.drawing.FontWidths;
import org.loomproof.papers.drawing.Ink;
import org.loomproof.papers.drawing.Pen;
import org.loomproof.papers.drawing.Port.Side;
import org.loomproof.papers.drawing.Sketch;
import org.loomproof.papers.page.Wording;
import org.loomproof.workshop.brief.kit.Lead;
import org.loomproof.workshop.brief.kit.Port;
import org.loomproof.workshop.plan.End;
import org.loomproof.workshop.plan.Hookup;
import org.loomproof.workshop.plan.Plan;

/** One plug of the controller with the leads that are connected or on hold. */
final class PlugBlock {

    private static final double PITCH = 15;
    private static final double HEAD = 16;
    private static final double POSITION = 20;
    private static final double LONGEST_ROLE = 150;

    private final Plan plan;
    private final Connections connections;
    private final Wording words;

    PlugBlock(Plan plan, Connections connections, Wording words) {
        this.plan = plan;
        this.connections = connections;
        this.words = words;
    }

    /** The plug's block; empty when none of its leads is drawn. */
    Optional<Block> block(String plug, List<Lead> leads) {
        List<Lead> shown = leads.stream().filter(this::isShown).toList();
        if (shown.isEmpty()) {
            return Optional.empty();
        }
        String title = words.of("schematic.plug", plug);
        double width = POSITION
                + 6
                + shown.stream()
                        .mapToDouble(l -> FontWidths.width(role(l), Sketch.TYPE, false))
                        .max()
                        .orElse(0);
        width = Math.max(width, FontWidths.width(title, Sketch.TYPE, true) + 10);
        double height = HEAD + PITCH * shown.size() + 4;
        Sketch s = new Sketch();
        s.rectangle(new Pen(Pen.INK.colour(), Optional.empty(), 1.2, false, false), "none", 0, 0, width, height);
        s.letter(5, 10, title, title, Ink.Anchor.START, true);
        List<Stubs.Stub> stubs = new ArrayList<>();
        double y = HEAD + PITCH / 2;
        for (Lead lead : shown) {
            arrow(s, lead.port(), y);
            s.letter(9, y + 2.6, lead.position(), lead.position(), Ink.Anchor.START, true);
            s.letter(POSITION + 2, y + 2.6, role(lead), words.role(lead.role()), Ink.Anchor.START, false);
            End end = new End.OfLead(lead.id());
            stubs.add(new Stubs.Stub(lead.id().value(), Side.LEFT, y, tags(lead), connections.isGrounded(end), false));
            y += PITCH;
        }
        return Optional.of(Stubs.block(blockId(plug), Block.Zone.RIGHT, width, height, s.ink(), stubs));
    }

    private boolean isShown(Lead lead) {
        End end = new End.OfLead(lead.id());
        Optional<Hookup> hookup = plan.findHookup(lead.id());
        boolean isDecided = hookup.map(h -> switch (h) {
                    case Hookup.Connect c -> true;
                    case Hookup.Hold c -> true;
                    case Hookup.Trim c -> false;
                    case Hookup.CapAndKeep c -> false;
                })
                .orElse(false);
        boolean isWired = plan.wires().stream().anyMatch(w -> w.from().equals(end) || w.to().equals(end));
        return isDecided || (isWired && hookup.isPresent());
    }

    private String role(Lead lead) {
        return FontWidths.fitted(words.role(lead.role()), LONGEST_ROLE, Sketch.TYPE, false);
    }

    private List<Tag> tags(Lead lead) {
        List<Tag> tags = connections.tags(new End.OfLead(lead.id()));
        if (!tags.isEmpty()) {
            return tags;
        }
        String letters = lead.colour().map(c -> c.letters()).orElse("");
        boolean isWired = plan.wires().stream()
                .anyMatch(w -> w.from().equals(new End.OfLead(lead.id())) || w.to().equals(new End.OfLead(lead.id())));
        String key = isWired ? "schematic.lead" : isHeld(lead) ? "schematic.lead-on-hold" : "schematic.lead-own-plug";
        return List.of(new Tag(words.of(key, letters), Connections.pen(lead)));
    }

    private boolean isHeld(Lead lead) {
        return plan.findHookup(lead.id()).filter(Hookup.Hold.class::isInstance).isPresent();
    }

    /** Which way the lead works: into the controller, or out of it. */
    private static void arrow(Sketch s, Port port, double y) {
        boolean isInward = switch (port) {
            case Port.Supply p -> true;
            case Port.Ground p -> true;
            case Port.Input p -> true;
            case Port.LowSide p -> false;
            case Port.HighSide p -> false;
            case Port.ToExtra p -> false;
        };
        double tip = isInward ? 6 : 0.8;
        double base = isInward ? 0.8 : 6;
        s.filled(Pen.INK.colour(), base, y - 2.5, tip, y, base, y + 2.5);
    }

    /** The id of a plug's block. */
    static String blockId(String plug) {
        return "plug " + plug;
    }
}
